using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ConcreteAttach.Tests.PublishedCases;

/// <summary>A stated value beside the one that the verification gives.</summary>
/// <param name="Stated">What the source states.</param>
/// <param name="Ours">Our value as text, in the source's unit; null where the output has none.</param>
/// <param name="Difference">Ours less stated, in the source's unit; null for text.</param>
/// <param name="Agrees">Equal text, or a difference within the tolerance.</param>
/// <param name="Problem">Why no value was found; null where there is one.</param>
internal sealed record CaseComparison(CaseValue Stated, string? Ours, double? Difference, bool Agrees, string? Problem)
{
    // Of the stated value: a printed 12.5 must not fail for the last bit of 12.45.
    private const double Slack = 1e-9;

    public override string ToString() => Problem is not null
        ? $"{Stated.Place}: {Problem}"
        : $"{Stated.Place}: stated {Stated.Stated}, ours {Ours}" + (Difference is { } d ? string.Create(CultureInfo.InvariantCulture, $", difference {d:G3}") : "");

    /// <summary>Looks a stated value up in an output document of the JSON contract and compares.</summary>
    internal static CaseComparison Of(JsonObject output, CaseValue stated)
    {
        try
        {
            if (stated.IsText)
            {
                string text = Text(output, stated);
                return new(stated, text, null, text == stated.Value.GetString(), null);
            }

            (double value, string? unit) = Number(output, stated);
            double ours = CaseUnits.Convert(value, unit, stated.Unit) * stated.Times;
            double number = stated.Value.GetDouble();
            double difference = ours - number;
            return new(stated, string.Create(CultureInfo.InvariantCulture, $"{ours:G10}"), difference,
                Math.Abs(difference) <= stated.Tolerance + Slack * Math.Abs(number), null);
        }
        catch (Exception e) when (e is FormatException or KeyNotFoundException or InvalidOperationException)
        {
            return new(stated, null, null, false, e.Message);
        }
    }

    private static string Text(JsonObject output, CaseValue stated)
    {
        if (stated.Mode is null)
            return Needed(output, stated.Field!).GetValue<string>();
        string[] found = [.. Entries(output, stated).Select(mode => stated.Field == "group"
            ? string.Join(", ", Needed(mode, "group").AsArray().Select(index => index!.GetValue<int>().ToString(CultureInfo.InvariantCulture)))
            : Needed(mode, stated.Field!).GetValue<string>()).Distinct()];
        return found is [var one] ? one : throw new FormatException($"several values: {string.Join("; ", found)}");
    }

    private static (double Value, string? Unit) Number(JsonObject output, CaseValue stated)
    {
        if (stated.Fastener is { } index)
        {
            JsonObject[] forces = [.. Needed(output, "fasteners").AsArray().Select(f => f!.AsObject())
                .Where(f => Needed(f, "index").GetValue<int>() == index && (stated.Case is null || f["case"]?.GetValue<string>() == stated.Case))];
            JsonObject force = Single(forces, stated, f => f["case"]?.GetValue<string>() ?? "");
            return stated.Field == "tension"
                ? Quantity(force, "tension")
                : (Needed(force, "shear").AsArray()[stated.Field == "shear x" ? 0 : 1]!.GetValue<double>(), Needed(force, "unit").GetValue<string>());
        }

        if (stated.Contact is { } field)
        {
            JsonObject[] states = [.. Needed(output, "contact").AsArray().Select(c => c!.AsObject()).Where(c => stated.Case is null || c["case"]?.GetValue<string>() == stated.Case)];
            return Quantity(Single(states, stated, c => c["case"]?.GetValue<string>() ?? ""), field);
        }

        if (stated.Mode is null)
            return (Needed(output, stated.Field!).GetValue<double>(), null);

        JsonObject mode = Single(Entries(output, stated), stated, m => $"{m["id"]} [{m["case"]}]");
        if (stated.Step is { } id)
        {
            JsonObject[] steps = [.. (mode["steps"]?.AsArray() ?? []).Select(s => s!.AsObject()).Where(s => s["id"]?.GetValue<string>() == id)];
            JsonObject step = Single(steps, stated, _ => "the same step");
            return (Needed(step, "value").GetValue<double>(), step["unit"]?.GetValue<string>());
        }

        return stated.Field is "factor" or "utilization"
            ? (Needed(mode, stated.Field).GetValue<double>(), null)
            : Quantity(mode, stated.Field!);
    }

    private static JsonObject[] Entries(JsonObject output, CaseValue stated)
    {
        JsonObject[] modes = [.. Needed(output, "modes").AsArray().Select(m => m!.AsObject())
            .Where(m => stated.Case is null || m["case"]?.GetValue<string>() == stated.Case)];
        JsonObject[] exact = [.. modes.Where(m => Id(m) == stated.Mode)];
        JsonObject[] found = exact.Length > 0 ? exact : [.. modes.Where(m => Id(m).StartsWith(stated.Mode + "/", StringComparison.Ordinal))];
        return found.Length > 0 ? found : throw new KeyNotFoundException($"no such mode among {string.Join(", ", modes.Select(Id).Distinct())}");

        static string Id(JsonObject mode) => Needed(mode, "id").GetValue<string>();
    }

    private static JsonObject Single(JsonObject[] found, CaseValue stated, Func<JsonObject, string> name) => found switch
    {
        [var one] => one,
        [] => throw new KeyNotFoundException($"the output has no {stated.Place}"),
        _ => throw new FormatException($"several entries: {string.Join(", ", found.Select(name))}"),
    };

    private static (double Value, string? Unit) Quantity(JsonObject parent, string field)
    {
        JsonNode quantity = Needed(parent, field);
        return (Needed(quantity.AsObject(), "value").GetValue<double>(), Needed(quantity.AsObject(), "unit").GetValue<string>());
    }

    private static JsonNode Needed(JsonObject parent, string field) =>
        parent[field] ?? throw new KeyNotFoundException($"no '{field}'" + (parent["reason"] is { } reason ? $" ({reason})" : ""));
}
