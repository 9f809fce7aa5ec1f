using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Quantities;

public sealed class InputExceptionTests
{
    [Fact]
    public void Names_the_parameter_what_was_found_and_what_is_permitted()
    {
        var error = new InputException("effectiveEmbedment", "-3 in", "above 0 in");

        Assert.Equal("effectiveEmbedment", error.Parameter);
        Assert.Equal("-3 in", error.Found);
        Assert.Equal("above 0 in", error.Permitted);
        Assert.Equal("effectiveEmbedment: found -3 in, permitted: above 0 in", error.Message);
        Assert.IsAssignableFrom<ArgumentException>(error);
    }
}
