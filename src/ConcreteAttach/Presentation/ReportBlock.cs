using ConcreteAttach.Calculation;

namespace ConcreteAttach.Presentation;

/// <summary>A piece of a report, before it is written as text or Markdown.</summary>
internal abstract record ReportBlock;

/// <summary>A heading; level 1 is the title.</summary>
internal sealed record HeadingBlock(int Level, string Text) : ReportBlock;

/// <summary>A paragraph.</summary>
internal sealed record ParagraphBlock(string Text) : ReportBlock;

/// <summary>A list of sentences.</summary>
internal sealed record BulletsBlock(IReadOnlyList<string> Items) : ReportBlock;

/// <summary>A table; columns of numbers are set to the right.</summary>
internal sealed record TableBlock(IReadOnlyList<TableColumn> Columns, IReadOnlyList<string[]> Rows) : ReportBlock;

/// <summary>A column of a <see cref="TableBlock"/>.</summary>
internal readonly record struct TableColumn(string Heading, bool IsNumber = false);

/// <summary>A calculation.</summary>
internal sealed record SheetBlock(CalculationSheet Sheet) : ReportBlock;
