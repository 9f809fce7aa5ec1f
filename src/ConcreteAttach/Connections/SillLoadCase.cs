using ConcreteAttach.Actions;
using ConcreteAttach.Nds;

namespace ConcreteAttach.Connections;

/// <summary>A load case on a sill: the actions, in the one safety format of wood and concrete, and what the wood asks of the load besides. Immutable.</summary>
/// <param name="actions">Forces and moments on the bolts; in strength design, or in allowable stress design with the weighted load factor of the concrete's side.</param>
public sealed class SillLoadCase(LoadCase actions)
{
    /// <summary>Forces and moments on the bolts.</summary>
    public LoadCase Actions { get; } = actions ?? throw new ArgumentNullException(nameof(actions));

    /// <summary>Time effect of the combination; needed in strength design, and no other.</summary>
    public TimeEffect? TimeEffect { get; init; }

    /// <summary>Shortest duration of its loads; needed in allowable stress design, and no other.</summary>
    public LoadDuration? Duration { get; init; }
}
