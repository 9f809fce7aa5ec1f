using ConcreteAttach.Calculation;
using ConcreteAttach.Presentation.Drawings;

namespace ConcreteAttach.Presentation;

/// <summary>A piece of a report, before it is written as text or Markdown.</summary>
internal abstract record ReportBlock;

/// <summary>A heading; level 1 is the title. Tables point to it by its name, where it has one.</summary>
internal sealed record HeadingBlock(int Level, string Text, string? Name = null) : ReportBlock;

/// <summary>A paragraph; <paramref name="IsAnswer"/> where it is the answer to the whole question.</summary>
internal sealed record ParagraphBlock(string Text, bool IsAnswer = false) : ReportBlock;

/// <summary>A list of sentences.</summary>
internal sealed record BulletsBlock(IReadOnlyList<string> Items) : ReportBlock;

/// <summary>
/// A table; columns of numbers are set to the right. Each row may point to a heading, by its name. Rows that have the same text in a column may be shown under it as a group.
/// </summary>
internal sealed record TableBlock(string Caption, IReadOnlyList<TableColumn> Columns, IReadOnlyList<string[]> Rows, IReadOnlyList<string?>? Targets = null, int? Group = null) : ReportBlock;

/// <summary>A column of a <see cref="TableBlock"/>.</summary>
internal readonly record struct TableColumn(string Heading, bool IsNumber = false);

/// <summary>A calculation.</summary>
internal sealed record SheetBlock(CalculationSheet Sheet) : ReportBlock;

/// <summary>
/// A figure, drawn only where a rendering shows it; null where there is nothing to draw. Text and Markdown leave it out. It stands in the section before it, or in one of its own.
/// </summary>
internal sealed record FigureBlock(Func<Drawing?> Draw, string? Section = null) : ReportBlock;
