using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Distribution;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Benchmarks;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Attached;

/// <summary>An attachment with a plate: contact only on concrete, stand-off, stiffness of the plate, what is refused, and that the fast path is the recorded one.</summary>
public sealed class BasePlateTests
{
    private static readonly Aci318Method Method = new(Aci318Edition.InchPound2019);

    [Fact]
    public void A_plate_over_an_edge_has_contact_only_on_concrete()
    {
        // Pressed in the middle of 10 of its 12 in.: with the edge at x = 4 the concrete under it runs from -6 to 4, its middle at -1.
        Attachment attachment = Pedestal(Plate(12, PlateContact.StrainCompatibility), new EdgeDistances { PlusX = Inches(4) }, 3);
        ContactState contact = Verify(attachment, new LoadCase("P") { N = Kips(-50), At = new(Inches(-1), Inches(0)) }).Contacts[0];

        Assert.Equal(120, contact.Area.SquareInches, 1e-9);
        Assert.Equal(-1, contact.CompressionAt!.Value.X.Inches, 1e-9);
        Assert.Equal(50_000.0 / 120, contact.LargestPressure.PoundsForcePerSquareInch, 1e-6);
        Assert.Null(contact.TensionAt);
        Assert.Null(contact.LeverArm);
    }

    [Fact]
    public void Sums_and_places_balance_the_load()
    {
        Attachment attachment = Pedestal(Plate(14, PlateContact.StrainCompatibility), EdgeDistances.None, 5);
        ContactState contact = Verify(attachment, new LoadCase("P, M") { N = Kips(-30), Mx = KipInches(150), My = KipInches(-220) }).Contacts[0];

        double t = contact.Tension.KilopoundsForce, c = contact.Compression.KilopoundsForce;
        Assert.Equal(-30, t - c, 1e-9);
        Assert.Equal(150, (t * contact.TensionAt!.Value.Y.Inches) - (c * contact.CompressionAt!.Value.Y.Inches), 1e-7);
        Assert.Equal(-220, (c * contact.CompressionAt!.Value.X.Inches) - (t * contact.TensionAt!.Value.X.Inches), 1e-7);
        Assert.True(contact.Zone.Length >= 3);
    }

    [Fact]
    public void A_stand_off_covers_neither_compression_nor_shear()
    {
        Attachment attachment = Pedestal(Plate(12, PlateContact.StandOff), EdgeDistances.None, 4);
        AttachmentVerification pulled = Verify(attachment, new LoadCase("pull") { N = Kips(4) });
        AttachmentVerification bent = Verify(attachment, new LoadCase("bend") { N = Kips(4), Mx = KipInches(100) });
        AttachmentVerification pushed = Verify(attachment, new LoadCase("push") { Vx = Kips(1) });

        Assert.Equal(Verdict.Holds, pulled.Verdict);
        Assert.Equal(ModeStatus.NotApplicable, Status(pulled, "compression/stand-off"));
        Assert.Equal(Verdict.NotCovered, bent.Verdict);
        Assert.Equal(ModeStatus.NotCovered, Status(bent, "compression/stand-off"));
        Assert.Equal(ModeStatus.NotCovered, Status(pushed, "shear/steel"));
        Assert.Empty(bent.Contacts);
    }

    [Fact]
    public void Prying_raises_what_the_fasteners_are_checked_with_and_nothing_else()
    {
        BasePlate plate = Plate(12, PlateContact.StrainCompatibility);
        var load = new LoadCase("M") { Mx = KipInches(90) };
        AttachmentVerification without = Verify(Pedestal(plate, EdgeDistances.None, 4), load);
        AttachmentVerification with = Verify(Pedestal(plate with { PryingAllowance = 0.25 }, EdgeDistances.None, 4), load);

        Assert.All(without.Forces.Zip(with.Forces), f => Assert.Equal(1.25 * f.First.Tension.PoundsForce, f.Second.Tension.PoundsForce, 1e-9));
        Assert.Equal(without.Contacts[0].Tension.PoundsForce, with.Contacts[0].Tension.PoundsForce, 1e-9);
    }

    // Lifted at both ends beyond the profile: 4 fasteners at x = ±4 pulled with 10 kip each, profile 4 in. wide: moment 2 · 10 · (4 − 2) = 40 kip-in over 12 in.; t = 1 in.: 6 · 40/12 = 20 ksi.
    [Fact]
    public void Bending_of_the_plate_beside_the_profile_tells_whether_it_is_rigid()
    {
        BasePlate plate = Plate(12, PlateContact.StrainCompatibility) with
        {
            Thickness = Inches(1),
            Profile = new(new(Inches(-2), Inches(-5)), new(Inches(2), Inches(5))),
            Yield = Pressure.FromKilopoundsForcePerSquareInch(36),
        };
        AttachmentVerification stiff = Verify(Pedestal(plate, EdgeDistances.None, 4), new LoadCase("T") { N = Kips(40) });
        AttachmentVerification soft = Verify(Pedestal(plate with { Thickness = Inches(0.5) }, EdgeDistances.None, 4), new LoadCase("T") { N = Kips(40) });

        Assert.Equal(20, stiff.Contacts[0].PlateBending!.Value.KilopoundsForcePerSquareInch, 1e-9);
        Assert.DoesNotContain(stiff.Notices, n => n.Contains("rigid", StringComparison.Ordinal));
        Assert.Equal(80, soft.Contacts[0].PlateBending!.Value.KilopoundsForcePerSquareInch, 1e-9);
        Assert.Contains(soft.Notices, n => n.Contains("not rigid", StringComparison.Ordinal));
    }

    [Fact]
    public void The_fast_path_is_the_recorded_one_and_the_turned_plate_is_the_same()
    {
        var random = new Random(41);
        for (int i = 0; i < 300; i++)
        {
            double size = 8 + (random.NextDouble() * 10);
            double spot = size * (0.2 + (0.25 * random.NextDouble()));
            Attachment attachment = Pedestal(Plate(size, random.Next(2) == 0 ? PlateContact.StrainCompatibility : PlateContact.ElasticBed), EdgeDistances.None, spot);
            var load = new LoadCase("case")
            {
                N = Kips((random.NextDouble() * 60) - 40), Mx = KipInches((random.NextDouble() * 400) - 200), My = KipInches((random.NextDouble() * 400) - 200),
                Vx = Kips(random.NextDouble() * 5), Mz = KipInches(random.NextDouble() * 10),
            };
            PreparedAttachment prepared = Method.Prepare(attachment);
            var results = new ModeResult[prepared.ModeCapacity];
            int count = prepared.Evaluate(prepared.Prepare(load), results);
            AttachmentVerification verification = prepared.Verify([load], SheetScope.All);

            Assert.Equal([.. results[..count].Select(r => r.Utilization)], verification.Modes.Take(count).Select(m => m.Utilization ?? double.NaN).ToArray());

            LoadCase turned = new("case") { N = load.N, Mx = -load.My, My = load.Mx, Vy = load.Vx, Mz = load.Mz };
            AttachmentVerification other = prepared.Verify(turned);
            Assert.Equal(verification.Contacts[0].LargestPressure.PoundsForcePerSquareInch, other.Contacts[0].LargestPressure.PoundsForcePerSquareInch, 1e-6 * verification.Contacts[0].LargestPressure.PoundsForcePerSquareInch);
        }
    }

    [Fact]
    public void Evaluate_with_a_plate_in_contact_allocates_nothing()
    {
        PreparedAttachment prepared = Method.Prepare(Pedestal(Plate(12, PlateContact.StrainCompatibility), EdgeDistances.None, 4));
        PreparedActions actions = prepared.Prepare(new LoadCase("M") { N = Kips(-10), Mx = KipInches(150), Vx = Kips(2) });
        var results = new ModeResult[prepared.ModeCapacity];
        Assert.Equal(0, Allocation.Of(() => prepared.Evaluate(actions, results)));
    }

    [Fact]
    public void The_sheet_shows_how_the_two_sides_balance()
    {
        Attachment attachment = Pedestal(Plate(14, PlateContact.ElasticBed), EdgeDistances.None, 5);
        AttachmentVerification verification = Verify(attachment, new LoadCase("P, M") { N = Kips(-30), Mx = KipInches(150), My = KipInches(-220) });
        var sheet = verification.Distribution[0].Sheet;

        Assert.Equal(-30_000, sheet.Find("N_eq")!.Value, 1e-5);
        Assert.Equal(150_000, sheet.Find("M_x_eq")!.Value, 1e-3);
        Assert.Equal(-220_000, sheet.Find("M_y_eq")!.Value, 1e-3);
        Assert.Equal(verification.Forces.Max(f => f.Tension.PoundsForce), sheet.Find("N_i")!.Value, 1e-6);
    }

    [Fact]
    public void A_fastener_outside_of_the_plate_is_named()
    {
        InputException error = Assert.Throws<InputException>(() => Method.Prepare(Pedestal(Plate(12, PlateContact.StrainCompatibility), EdgeDistances.None, 5.8)));

        Assert.Equal("positions", error.Parameter);
        Assert.Contains("fastener 0 at x = -5.8 in, y = -5.8 in", error.Found, StringComparison.Ordinal);
        Assert.Contains("half a diameter", error.Permitted, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_plate_needs_is_asked_for()
    {
        BasePlate bed = Plate(12, PlateContact.ElasticBed) with { BedDepth = null };
        Attachment light = Pedestal(Plate(12, PlateContact.StrainCompatibility), EdgeDistances.None, 4, ConcreteDensity.SandLightweight);
        BasePlate holes = Plate(12, PlateContact.StandOff) with { Holes = [PlateHole.Standard] };

        Assert.Equal("bedDepth", Assert.Throws<InputException>(() => Method.Prepare(Pedestal(bed, EdgeDistances.None, 4))).Parameter);
        Assert.Equal("modularRatio", Assert.Throws<InputException>(() => Method.Prepare(light)).Parameter);
        Assert.Equal("holes", Assert.Throws<InputException>(() => Method.Prepare(Pedestal(holes, EdgeDistances.None, 4))).Parameter);
        Assert.Equal("prying", Assert.Throws<InputException>(() => Plate(12, PlateContact.StandOff) with { PryingAllowance = -0.1 }).Parameter);
        Assert.Equal("modularRatio", Assert.Throws<InputException>(() => Plate(12, PlateContact.StandOff) with { ModularRatio = double.NaN }).Parameter);
        Assert.Equal("thickness", Assert.Throws<InputException>(() => Plate(12, PlateContact.StandOff) with { Thickness = Length.Zero }).Parameter);
        Assert.Equal("contact", Assert.Throws<InputException>(() => BasePlate.Rectangle(Inches(1), Inches(1), (PlateContact)9)).Parameter);
        Assert.Equal("width", Assert.Throws<InputException>(() => BasePlate.Rectangle(Inches(-1), Inches(1), PlateContact.StandOff)).Parameter);
    }

    // 19.2.2.1: E_c = w_c^1.5 33 √f'c at 110 lb/ft³ and 4000 psi: 2 407 868 psi.
    [Fact]
    public void The_modular_ratio_of_a_given_density_follows_19_2_2_1()
    {
        Attachment attachment = Pedestal(Plate(12, PlateContact.StrainCompatibility), EdgeDistances.None, 4, ConcreteDensity.Of(Density.FromPoundsPerCubicFoot(110)));
        var sheet = Verify(attachment, new LoadCase("M") { Mx = KipInches(90) }).Distribution[0].Sheet;

        Assert.Equal(33 * Math.Pow(110, 1.5) * Math.Sqrt(4000), sheet.Find("E_c")!.Value, 1e-4);
        Assert.Equal(29e6 / sheet.Find("E_c")!.Value, sheet.Find("n_m")!.Value, 1e-12);
    }

    private static ModeStatus Status(AttachmentVerification verification, string id) => Assert.Single(verification.Modes, m => m.Id == id).Status;

    private static AttachmentVerification Verify(Attachment attachment, LoadCase loadCase) => Method.Verify(attachment, loadCase);

    private static Attachment Pedestal(BasePlate plate, EdgeDistances edges, double spot, ConcreteDensity? density = null) => new(
        new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Inches(40)) { Edges = edges, Density = density ?? ConcreteDensity.Normalweight },
        new HeadedBolt(Inches(0.75), AnchorSteels.Find("ASTM F1554 Grade 55", Inches(0.75)), Inches(15)) { Thread = ScrewThread.UnifiedCoarse },
        FastenerLayout.Rectangle(2, Inches(2 * spot), 2, Inches(2 * spot)))
    { Plate = plate };

    private static BasePlate Plate(double side, PlateContact contact) => BasePlate.Rectangle(Inches(side), Inches(side), contact) with { BedDepth = Inches(30) };

    private static Length Inches(double value) => Length.FromInches(value);

    private static Force Kips(double value) => Force.FromKilopoundsForce(value);

    private static Torque KipInches(double value) => Torque.FromKilopoundForceInches(value);
}
