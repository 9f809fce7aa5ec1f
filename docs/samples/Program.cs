using ConcreteAttach.Quantities;

#region bad-input
var error = new InputException("effectiveEmbedment", "-3 in", "above 0 in");
Console.WriteLine(error.Message);
#endregion
