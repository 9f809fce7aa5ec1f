using System.Collections.Immutable;
using ConcreteAttach.Attached;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads the shear lugs of an input document.</summary>
internal static class ShearLugReader
{
    private static readonly (string, ShearAxis)[] Axes = [("x", ShearAxis.X), ("y", ShearAxis.Y)];

    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static ImmutableArray<ShearLug> Lugs(InputValue value) =>
        [.. value.Items("an array of shear lugs").Select(item => Lug(item.Object("an object with takes, thickness, width, depth and what else is known of the lug")))];

    private static ShearLug Lug(InputObject lug)
    {
        lug.AllowOnly(["takes", "thickness", "width", "depth", "at", "stiffeners"]);
        return lug.Value.Guard(() => new ShearLug(
            lug.Required("takes").Choice(Axes), lug.Required("thickness").Length(), lug.Required("width").Length(), lug.Required("depth").Length())
        {
            At = lug.Optional("at") is { } at ? PlateReader.Position(at) : default,
            Stiffeners = lug.Optional("stiffeners") is { } stiffeners ? Stiffeners(stiffeners.Object("an object with thickness, length and places")) : null,
        });
    }

    private static ShearLugStiffeners Stiffeners(InputObject stiffeners)
    {
        stiffeners.AllowOnly(["thickness", "length", "places"]);
        return stiffeners.Value.Guard(() => new ShearLugStiffeners(
            stiffeners.Required("thickness").Length(), stiffeners.Required("length").Length(),
            [.. stiffeners.Required("places").Items("an array with the place of each stiffener along the width, from the middle of the lug").Select(place => place.Length())]));
    }
}
