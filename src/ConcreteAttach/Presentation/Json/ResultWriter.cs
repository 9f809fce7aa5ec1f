using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Presentation.Json;

/// <summary>
/// Writes result and error documents of the JSON contract. Laid out on lines, a step, a force or a group of fasteners still is one line.
/// </summary>
internal sealed class ResultWriter : IDisposable
{
    private readonly ArrayBufferWriter<byte> _buffer = new();
    private readonly ArrayBufferWriter<byte> _lineBuffer = new();
    private readonly Utf8JsonWriter _json;
    private readonly Utf8JsonWriter _line;
    private readonly bool _isIndented;

    private ResultWriter(bool indented)
    {
        // Letters such as ψ and signs such as ≤ stay readable. The document is data for programs, never part of an HTML page.
        var options = new JsonWriterOptions { Indented = indented, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        _isIndented = indented;
        _json = new Utf8JsonWriter(_buffer, options);
        _line = new Utf8JsonWriter(_lineBuffer, options with { Indented = false });
    }

    public static string Result(VerificationResult verification, string? title, bool indented)
    {
        using var writer = new ResultWriter(indented);
        writer.WriteResult(verification, title);
        return writer.Text();
    }

    public static string Error(InputException error, bool indented)
    {
        using var writer = new ResultWriter(indented);
        writer.WriteError(error);
        return writer.Text();
    }

    public void Dispose()
    {
        _json.Dispose();
        _line.Dispose();
    }

    private string Text()
    {
        _json.Flush();
        string text = Encoding.UTF8.GetString(_buffer.WrittenSpan);

        // No line break stands inside a JSON text, so that this only touches the layout.
        return _isIndented ? text.Replace("\r\n", "\n", StringComparison.Ordinal) : text;
    }

    private void WriteError(InputException error)
    {
        _json.WriteStartObject();
        _json.WriteStartObject("error");
        _json.WriteString("path", error.Parameter);
        _json.WriteString("found", error.Found);
        _json.WriteString("message", error.Parameter.Length == 0 ? $"found {error.Found}, permitted: {error.Permitted}" : error.Message);
        _json.WriteString("permitted", error.Permitted);
        _json.WriteEndObject();
        _json.WriteEndObject();
    }

    private void WriteResult(VerificationResult verification, string? title)
    {
        _json.WriteStartObject();
        _json.WriteString("schema", VerificationJson.Schema);
        if (title is not null)
        {
            _json.WriteString("title", title);
        }

        _json.WriteString("library", VerificationJson.LibraryVersion);
        _json.WriteString("method", verification.Method);
        _json.WriteString("constants", verification.Constants);
        _json.WriteString("verdict", StatusText.Of(verification.Verdict));
        WriteGoverning(verification);
        WriteNumberOrNull(_json, "loadFactor", verification.LoadFactor);
        _json.WriteStartArray("modes");
        foreach (string loadCase in verification.LoadCaseNames)
        {
            // Detailing belongs to no load case in the model; here it stands under each.
            foreach (FailureMode mode in verification.Modes.Where(m => m.LoadCase is null || m.LoadCase == loadCase))
            {
                WriteMode(mode, loadCase, verification.System);
            }
        }

        _json.WriteEndArray();
        WriteFasteners(verification.System, verification is AttachmentVerification { Forces: var forces } ? forces : []);
        if (verification is AttachmentVerification attachment)
        {
            WriteContacts(attachment);
            WriteEarthquakeOptions(attachment);
            WriteDemand(attachment);
        }

        WriteTexts("assumptions", verification.Assumptions);
        WriteTexts("notices", verification.Notices);
        WriteTexts("cautions", ReportContent.Cautions);
        _json.WriteEndObject();
    }

    private void WriteGoverning(VerificationResult verification)
    {
        if (verification.Governing is not { } governing)
        {
            _json.WriteNull("governing");
            return;
        }

        _line.WriteStartObject();
        _line.WriteString("mode", governing.Id);
        _line.WriteString("case", governing.LoadCase ?? verification.LoadCaseNames[0]);
        WriteNumberOrNull(_line, "utilization", governing.Utilization);
        _line.WriteEndObject();
        _json.WritePropertyName("governing");
        EndLine();
    }

    private void WriteMode(FailureMode mode, string loadCase, MeasurementSystem system)
    {
        _json.WriteStartObject();
        _json.WriteString("id", mode.Id);
        _json.WriteString("case", loadCase);
        _json.WritePropertyName("group");
        _line.WriteStartArray();
        foreach (int fastener in mode.Group)
        {
            _line.WriteNumberValue(fastener);
        }

        _line.WriteEndArray();
        EndLine();
        _json.WriteString("status", StatusText.Of(mode.Status));
        if (mode.Reason is { } reason)
        {
            _json.WriteString("reason", reason);
        }

        _json.WriteString("clause", mode.Clause);
        WriteForce("nominal", mode.Nominal, system);
        WriteNumber("factor", mode.Factor);
        WriteForce("design", mode.Design, system);
        WriteForce("demand", mode.Demand, system);
        WriteNumber("utilization", mode.Utilization);
        if (mode.Sheet is { } sheet)
        {
            WriteSteps(sheet);
        }

        _json.WriteEndObject();
    }

    /// <summary>The symbols of a sheet with their values. An id stands once, with the value that <see cref="CalculationSheet.Find"/> gives.</summary>
    private void WriteSteps(CalculationSheet sheet)
    {
        _json.WriteStartArray("steps");
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (ValueLine value in sheet.Lines.OfType<ValueLine>())
        {
            if (!double.IsFinite(value.Value) || !ids.Add(value.Id))
            {
                continue;
            }

            _line.WriteStartObject();
            _line.WriteString("id", value.Id);
            _line.WriteString("symbol", value.Symbol);
            _line.WriteNumber("value", Plain(value.Value));
            _line.WriteString("unit", value.Unit);
            if (value is StepLine step)
            {
                _line.WriteString("clause", step.Clause);
                _line.WriteString("formula", step.Formula);
                _line.WriteString("substitution", step.Substitution);
            }
            else if (value is GivenLine { Origin: { } origin })
            {
                _line.WriteString("origin", origin);
            }

            _line.WriteEndObject();
            EndItem();
        }

        _json.WriteEndArray();
    }

    private void WriteFasteners(MeasurementSystem system, ImmutableArray<FastenerForces> all)
    {
        _json.WriteStartArray("fasteners");
        foreach (FastenerForces forces in all)
        {
            _line.WriteStartObject();
            _line.WriteNumber("index", forces.Index);
            _line.WriteString("case", forces.LoadCase);
            _line.WritePropertyName("tension");
            WriteQuantity(forces.Tension, system);
            _line.WriteStartArray("shear");
            _line.WriteNumberValue(Shown(forces.ShearX, system));
            _line.WriteNumberValue(Shown(forces.ShearY, system));
            _line.WriteEndArray();
            _line.WriteString("unit", ForceUnit(system).Text);
            _line.WriteEndObject();
            EndItem();
        }

        _json.WriteEndArray();
    }

    /// <summary>How the plate bears on the concrete; nothing without a plate in contact.</summary>
    private void WriteContacts(AttachmentVerification verification)
    {
        if (verification.Contacts.IsEmpty)
        {
            return;
        }

        MeasurementSystem system = verification.System;
        _json.WriteStartArray("contact");
        foreach (ContactState contact in verification.Contacts)
        {
            _json.WriteStartObject();
            _json.WriteString("case", contact.LoadCase);
            WriteForce("compression", contact.Compression, system);
            WritePlace("compressionAt", contact.CompressionAt, system);
            WriteForce("tension", contact.Tension, system);
            WritePlace("tensionAt", contact.TensionAt, system);
            WriteQuantity("leverArm", contact.LeverArm?.In(system), Dimension.Length, system);
            WriteQuantity("largestPressure", contact.LargestPressure.In(system), Dimension.Stress, system);
            WritePlace("largestPressureAt", contact.LargestPressureAt, system);
            WriteQuantity("area", contact.Area.In(system), Dimension.Area, system);
            WriteQuantity("plateBending", contact.PlateBending?.In(system), Dimension.Stress, system);
            _line.WriteStartArray();
            foreach (FastenerPosition corner in contact.Zone)
            {
                WritePlace(corner, system);
            }

            _line.WriteEndArray();
            _json.WritePropertyName("zone");
            EndLine();
            _json.WriteString("lengthUnit", Unit.Printed(Dimension.Length, system)!.Text);
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    /// <summary>What the options of design for earthquake give; nothing where no load case has a choice of them.</summary>
    private void WriteEarthquakeOptions(AttachmentVerification verification)
    {
        if (verification.EarthquakeOptions.IsEmpty)
        {
            return;
        }

        _json.WriteStartArray("earthquakeOptions");
        foreach (EarthquakeOption option in verification.EarthquakeOptions)
        {
            _line.WriteStartObject();
            _line.WriteString("case", option.LoadCase);
            _line.WriteString("of", option.Tension is null ? "shear" : "tension");
            _line.WriteString("option", option.Title);
            _line.WriteBoolean("taken", option.IsTaken);
            _line.WriteString("verdict", StatusText.Of(option.Verdict));
            if (option.Governing is { } governing)
            {
                _line.WriteString("mode", governing);
            }

            if (option.Utilization is { } utilization && double.IsFinite(utilization))
            {
                _line.WriteNumber("utilization", Plain(utilization));
            }

            if (option.Reason is { } reason)
            {
                _line.WriteString("reason", reason);
            }

            _line.WriteEndObject();
            EndItem();
        }

        _json.WriteEndArray();
    }

    /// <summary>Where the forces of the load cases come from; nothing where they were given.</summary>
    private void WriteDemand(AttachmentVerification verification)
    {
        if (verification.Demand.IsEmpty)
        {
            return;
        }

        _json.WriteStartArray("demand");
        foreach (DemandSheet demand in verification.Demand)
        {
            _json.WriteStartObject();
            _json.WriteString("title", demand.Title);
            if (demand.LoadCase is { } loadCase)
            {
                _json.WriteString("case", loadCase);
            }

            WriteSteps(demand.Sheet);
            _json.WriteEndObject();
        }

        _json.WriteEndArray();
    }

    private void WriteQuantity(string name, double? value, Dimension dimension, MeasurementSystem system)
    {
        if (value is { } number && double.IsFinite(number))
        {
            _line.WriteStartObject();
            _line.WriteNumber("value", Plain(number));
            _line.WriteString("unit", Unit.Printed(dimension, system)!.Text);
            _line.WriteEndObject();
            _json.WritePropertyName(name);
            EndLine();
        }
    }

    private void WritePlace(string name, FastenerPosition? place, MeasurementSystem system)
    {
        if (place is { } point)
        {
            WritePlace(point, system);
            _json.WritePropertyName(name);
            EndLine();
        }
    }

    private void WritePlace(FastenerPosition place, MeasurementSystem system)
    {
        _line.WriteStartArray();
        _line.WriteNumberValue(Plain(place.X.In(system)));
        _line.WriteNumberValue(Plain(place.Y.In(system)));
        _line.WriteEndArray();
    }

    private void WriteTexts(string name, IEnumerable<string> texts)
    {
        _json.WriteStartArray(name);
        foreach (string text in texts)
        {
            _json.WriteStringValue(text);
        }

        _json.WriteEndArray();
    }

    private void WriteForce(string name, Force? force, MeasurementSystem system)
    {
        if (force is { } value && double.IsFinite(value.Value))
        {
            WriteQuantity(value, system);
            _json.WritePropertyName(name);
            EndLine();
        }
    }

    private void WriteQuantity(Force force, MeasurementSystem system)
    {
        _line.WriteStartObject();
        _line.WriteNumber("value", Shown(force, system));
        _line.WriteString("unit", ForceUnit(system).Text);
        _line.WriteEndObject();
    }

    private void WriteNumber(string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            _json.WriteNumber(name, Plain(number));
        }
    }

    private static void WriteNumberOrNull(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, Plain(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>The value after a property name, as one line.</summary>
    private void EndLine()
    {
        _line.Flush();
        _json.WriteRawValue(_lineBuffer.WrittenSpan, skipInputValidation: true);
        _lineBuffer.ResetWrittenCount();
        _line.Reset();
    }

    /// <summary>The next item of an array, as a line of its own. A raw value gets no layout from the writer, so that it brings its own.</summary>
    private void EndItem()
    {
        _line.Flush();
        int indent = _isIndented ? 1 + (2 * _json.CurrentDepth) : 0;
        Span<byte> item = new byte[indent + _lineBuffer.WrittenCount];
        item[..indent].Fill((byte)' ');
        _lineBuffer.WrittenSpan.CopyTo(item[indent..]);
        if (_isIndented)
        {
            item[0] = (byte)'\n';
        }

        _json.WriteRawValue(item, skipInputValidation: true);
        _lineBuffer.ResetWrittenCount();
        _line.Reset();
    }

    private static double Shown(Force force, MeasurementSystem system) =>
        Plain(Unit.Printed(Dimension.Force, system)!.To(force.In(system), ForceUnit(system)));

    private static Unit ForceUnit(MeasurementSystem system) => system == MeasurementSystem.PoundInch ? Unit.Kip : Unit.Kilonewton;

    /// <summary>Zero without a sign.</summary>
    private static double Plain(double value) => value == 0 ? 0 : value;
}
