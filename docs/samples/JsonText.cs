using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Samples;

/// <summary>The JSON contract from a program, without files and without the command line.</summary>
internal static class JsonText
{
    public static string Verify(string input)
    {
        #region verify
        // A refused input gives an error document, never an exception.
        string result = VerificationJson.Verify(input);
        #endregion

        return result;
    }

    public static string ReadThenVerify(string input)
    {
        #region read
        try
        {
            VerificationRequest request = VerificationJson.Read(input);
            VerificationResult verification = request.Verify();
            return VerificationJson.Write(verification, request.Title);
        }
        catch (InputException error)
        {
            return VerificationJson.WriteError(error);
        }
        #endregion
    }
}
