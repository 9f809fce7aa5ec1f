#region using
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Distribution;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Presentation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;
#endregion

namespace ConcreteAttach.Samples;

/// <summary>The start page: one bolt beside an edge, from the inputs to the answer. An invented attachment.</summary>
internal static class FirstVerification
{
    public static void Run()
    {
        AttachmentVerification verification = Verify();

        #region reading
        Console.WriteLine(verification.Verdict);

        if (verification.Governing is { } governing)
        {
            Console.WriteLine($"{governing.Id} in {governing.LoadCase}: {governing.Utilization:F2}");
        }

        foreach (FailureMode mode in verification.Modes)
        {
            Console.WriteLine($"{mode.Id,-22} {mode.Status,-14} {mode.Clause} {mode.Reason}");
        }
        #endregion
    }

    public static AttachmentVerification Verify()
    {
        #region verification
        var concrete = new ConcreteMember(
            strength: Pressure.FromPoundsForcePerSquareInch(4000),
            thickness: Length.FromInches(14))
        {
            Edges = new EdgeDistances { PlusX = Length.FromInches(6) },
        };

        Length diameter = Length.FromInches(0.625);
        AnchorSteel steel = AnchorSteels.Find("ASTM F1554 Grade 36", diameter);
        Length embedment = Length.FromInches(8);
        var bolt = new HeadedBolt(diameter, steel, embedment);

        var attachment = new Attachment(concrete, bolt, FastenerLayout.Single());
        var uplift = new LoadCase("0.9D + 1.0W")
        {
            N = Force.FromKilopoundsForce(5),
            Vx = Force.FromKilopoundsForce(1),
        };

        var method = new Aci318Method(Aci318Edition.InchPound2019);
        AttachmentVerification verification = method.Verify(attachment, uplift);
        Console.WriteLine(TextReport.Write(verification));
        #endregion

        return verification;
    }

    /// <summary>The fast path: one attachment, many loads.</summary>
    public static double LargestFactor()
    {
        AttachmentVerification verification = Verify();
        Attachment attachment = verification.Attachment;
        LoadCase uplift = verification.LoadCases[0];
        var method = new Aci318Method(Aci318Edition.InchPound2019);

        #region evaluate
        PreparedAttachment prepared = method.Prepare(attachment);  // checks and converts once
        PreparedActions actions = prepared.Prepare(uplift);        // the same for a load case
        var results = new ModeResult[prepared.ModeCapacity];

        double largest = 0;
        for (double factor = 0.5; factor <= 4; factor += 0.5)
        {
            // Allocates nothing.
            int count = prepared.Evaluate(actions.Scaled(factor), results);
            bool holds = true;
            for (int i = 0; i < count; i++)
            {
                holds &= results[i].Status is ModeStatus.Satisfied or ModeStatus.NotApplicable;
            }

            largest = holds ? factor : largest;
        }
        #endregion

        return largest;
    }

    /// <summary>The one error of the library.</summary>
    public static string BadInput()
    {
        #region bad-input
        try
        {
            var strength = Pressure.FromPoundsForcePerSquareInch(4000);
            _ = new ConcreteMember(strength, thickness: Length.FromInches(-3));
        }
        catch (InputException error)
        {
            Console.WriteLine($"{error.Parameter} | {error.Found} | {error.Permitted}");
            return error.Message;
        }
        #endregion

        return "";
    }
}
