using ConcreteAttach.Samples;
using ConcreteAttach.Samples.Pages;

// The sample of the start page, as a reader runs it.
FirstVerification.Run();

// What the pages of the documentation show: artifacts/docs/*.md.
var fragments = new Fragments(Path.Combine(Repository.Root, "artifacts", "docs"));
CommonParts.Write(fragments);
ModePages.Write(fragments);
GeometryPage.Write(fragments);
WoodPage.Write(fragments);
DemandPage.Write(fragments);
WorkedExamples.Write(fragments);
TwoEditions.Write(fragments);
CommandLinePage.Write(fragments);
VerificationManual.Write(fragments);
Figures.Write(fragments.Folder);
Console.WriteLine($"{fragments.Count} fragments of pages written to {fragments.Folder}");
