using ConcreteAttach.Nds;
using UnitsNet;
using static ConcreteAttach.Tests.Nds.Wood;

namespace ConcreteAttach.Tests.Nds;

/// <summary>Yield limit equations against stated numbers, each with where it comes from.</summary>
public sealed class YieldLimitCases
{
    /// <summary>
    /// Table 12E of NDS-2018, bolts 1/2 to 3/4 in. through sills of 1-1/2 in.: the cells that were remembered before anything was computed. Printed to 10 lb. The cell
    /// 3/4 in. and two of 5/8 in. are remembered less surely.
    /// </summary>
    [Theory]
    [InlineData(0.5, 0.67, 770, 480)]
    [InlineData(0.5, 0.55, 680, 410)]
    [InlineData(0.5, 0.50, 650, 380)]
    [InlineData(0.5, 0.49, 640, null)]
    [InlineData(0.5, 0.43, 590, null)]
    [InlineData(0.5, 0.42, 590, 340)]
    [InlineData(0.625, 0.50, 930, null)]
    [InlineData(0.625, 0.43, 860, null)]
    [InlineData(0.625, 0.42, 850, null)]
    [InlineData(0.75, 0.50, 1270, null)]
    public void Sill_bolts_remembered_cells_of_Table_12E(double diameter, double gravity, int parallel, int? perpendicular)
    {
        Assert.Equal(parallel, Sill(diameter, gravity, 1.5, 0).Reference());
        if (perpendicular is { } across)
        {
            Assert.Equal(across, Sill(diameter, gravity, 1.5, 90).Reference());
        }
    }

    /// <summary>The table's order of rounding: Hem-Fir, 1/2 in. is 590 lb with F_e of 4800 psi, and would be 600 lb with 4816 psi. 590 from memory.</summary>
    [Fact]
    public void Bearing_strength_is_rounded_before_the_strength()
    {
        Assert.Equal(590, Sill(0.5, 0.43, 1.5, 0).Reference());
        Assert.InRange(Sill(0.5, 0.43, 1.5, 0, rounded: false).Reference(), 595.5, 596);
    }

    /// <summary>Constructed: dowel bearing strengths to 50 psi from the formulas under Table 12.3.3 (formulas from memory, values computed apart).</summary>
    [Theory]
    [InlineData(0.67, 7500, 4850, 4300, 3950, 3650, 3400, 7950)]
    [InlineData(0.55, 6150, 3650, 3250, 2950, 2750, 2550, 5550)]
    [InlineData(0.50, 5600, 3150, 2800, 2600, 2400, 2250, 4650)]
    [InlineData(0.49, 5500, 3050, 2750, 2500, 2300, 2150, 4450)]
    [InlineData(0.46, 5150, 2800, 2500, 2300, 2100, 2000, 4000)]
    [InlineData(0.43, 4800, 2550, 2250, 2050, 1900, 1800, 3500)]
    [InlineData(0.42, 4700, 2450, 2200, 2000, 1850, 1750, 3350)]
    [InlineData(0.37, 4150, 2050, 1850, 1650, 1550, 1450, 2650)]
    [InlineData(0.36, 4050, 1950, 1750, 1600, 1500, 1400, 2550)]
    [InlineData(0.35, 3900, 1900, 1700, 1550, 1400, 1350, 2400)]
    public void Dowel_bearing_strength(double gravity, int parallel, int half, int fiveEighths, int threeQuarters, int sevenEighths, int one, int small)
    {
        (double Diameter, int Across)[] sizes = [(0.5, half), (0.625, fiveEighths), (0.75, threeQuarters), (0.875, sevenEighths), (1, one)];
        Assert.All(sizes, size =>
        {
            Assert.Equal(parallel, Sill(size.Diameter, gravity, 1.5, 0).Lateral(Plain).Step("F_es"));
            Assert.Equal(size.Across, Sill(size.Diameter, gravity, 1.5, 90).Lateral(Plain).Step("F_es"));
        });
        var nail = new WoodConnection(new(DowelKind.Nail, In(0.148)), Concrete(), new WoodMember(Gravity(gravity), In(1.5), 90)) { IsRoundedAsPrinted = true };
        Assert.Equal(small, nail.Lateral(Plain).Step("F_es"));
    }

    /// <summary>
    /// Constructed: all terms and modes, computed apart with a script of the equations. F_em of 7500 psi, F_yb of 45,000 psi, ℓ_m of 6 in. Five digits after the point of
    /// the factors, two of the strengths.
    /// </summary>
    [Theory]
    [InlineData(0.625, 1.5, 5600, 0, 1.33929, 1.72382, 1.19960, 1.41087, 7031.25, 1312.50, 2513.91, 2866.15, 928.36, 1197.18, YieldMode.HingeAndSideBearing)]
    [InlineData(0.625, 1.5, 2800, 90, 2.67857, 3.08158, 1.76280, 1.44861, 5625.00, 525.00, 1797.59, 1949.73, 544.26, 763.75, YieldMode.SideBearing)]
    [InlineData(0.5, 1.5, 4800, 0, 1.56250, 1.96607, 1.28901, 1.20530, 5625.00, 900.00, 1966.07, 2197.18, 594.72, 732.06, YieldMode.HingeAndSideBearing)]
    [InlineData(0.5, 1.5, 2550, 90, 2.94118, 3.32470, 1.84140, 1.20818, 4500.00, 382.50, 1413.00, 1504.99, 343.85, 472.24, YieldMode.HingeAndSideBearing)]
    [InlineData(0.625, 2.5, 6150, 0, 1.21951, 0.94237, 1.14203, 1.10829, 7031.25, 2402.34, 2515.44, 2918.67, 1260.65, 1229.06, YieldMode.TwoHinges)]
    [InlineData(0.75, 3.5, 4700, 0, 1.59574, 0.83776, 1.33526, 0.97833, 8437.50, 3084.38, 2871.09, 3359.87, 1673.92, 1636.56, YieldMode.TwoHinges)]
    public void All_terms_and_modes(
        double diameter, double thickness, double bearing, double angle, double re, double k1, double k2, double k3,
        double im, double @is, double ii, double iiim, double iiis, double iv, YieldMode governing)
    {
        var connection = new WoodConnection(new(DowelKind.Bolt, In(diameter)), Concrete(), new TestedMember(Psi(bearing), In(thickness), angle));
        ConnectionStrength strength = connection.Lateral(Plain);

        Assert.Equal(re, strength.Step("R_e"), 5e-6);
        Assert.Equal(k1, strength.Step("k_1"), 5e-6);
        Assert.Equal(k2, strength.Step("k_2"), 5e-6);
        Assert.Equal(k3, strength.Step("k_3"), 5e-6);
        double[] expected = [im, @is, ii, iiim, iiis, iv];
        Assert.Equal(6, strength.Modes.Length);
        Assert.All(expected.Select((value, i) => (value, i)), e => Assert.Equal(e.value, strength.Modes[e.i].Strength.PoundsForce, 0.00501));
        Assert.Equal(governing, strength.Governing);
    }

    /// <summary>Constructed: 5/8 in. bolt, Douglas Fir-Larch, load at an angle, with Hankinson on F_e of 5600 and 2800 psi and K_θ.</summary>
    [Theory]
    [InlineData(0, 5600, 928.4)]
    [InlineData(15, 5248.4, 863.9)]
    [InlineData(30, 4480.0, 771.3)]
    [InlineData(45, 3733.3, 684.1)]
    [InlineData(60, 3200.0, 616.9)]
    [InlineData(75, 2897.0, 561.9)]
    [InlineData(90, 2800, 525.0)]
    public void Load_at_an_angle_to_grain(double angle, double bearing, double strength)
    {
        ConnectionStrength ours = Sill(0.625, 0.50, 1.5, angle).Lateral(Plain);
        Assert.Equal(bearing, ours.Step("F_es"), 0.0501);
        Assert.Equal(strength, ours.Step("Z_exact"), 0.0501);
    }

    /// <summary>Constructed: embedment beyond 3 in. gives nothing more, the wood yields first.</summary>
    [Theory]
    [InlineData(2, 864.7, YieldMode.Rotation)]
    [InlineData(3, 928.4, YieldMode.HingeAndSideBearing)]
    [InlineData(12, 928.4, YieldMode.HingeAndSideBearing)]
    public void Embedment(double embedment, double strength, YieldMode governing)
    {
        ConnectionStrength ours = Sill(0.625, 0.50, 1.5, 0, embedment).Lateral(Plain);
        Assert.Equal(strength, ours.Step("Z_exact"), 0.0501);
        Assert.Equal(governing, ours.Governing);
    }

    /// <summary>Constructed: gaps by the general dowel equations of TR12, 5/8 in., Douglas Fir-Larch, parallel.</summary>
    [Theory]
    [InlineData(0.125, 867.23, 1121.46)]
    [InlineData(0.25, 811.83, 1050.82)]
    [InlineData(0.5, 716.13, 924.35)]
    [InlineData(1, 571.99, 724.87)]
    public void Gap(double gap, double iiis, double iv)
    {
        ConnectionStrength ours = Sill(0.625, 0.50, 1.5, 0, gap: gap).Lateral(Plain);
        Assert.Equal(iiis, ours.Mode(YieldMode.HingeAndSideBearing), 0.00501);
        Assert.Equal(iv, ours.Mode(YieldMode.TwoHinges), 0.00501);
        if (gap == 0.125)
        {
            Assert.Equal(1.780952e-4, ours.Step("A_IIIs"), 5e-11);
            Assert.Equal(3799.80, ours.Step("C_IIIs"), 0.00501);
            Assert.Equal(1831.05, ours.Step("M"), 0.00501);
        }
    }

    /// <summary>
    /// Read in a secondary source (a general finite-element library's tests of solved examples of wood design): nail 0.148 x 3 in., side member 0.75 in. of Douglas Fir-Larch,
    /// 105.096 lb with F_e not rounded. Table value 105 lb with it rounded, from memory.
    /// </summary>
    [Fact]
    public void Nail_in_single_shear()
    {
        var nail = new WoodConnection(
            new(DowelKind.Nail, In(0.148)), new WoodMember(Gravity(0.5), In(2.25), 0), new WoodMember(Gravity(0.5), In(0.75), 0));
        Assert.Equal(105.096, nail.Reference(), 0.000501);
        var printed = new WoodConnection(nail.Fastener, nail.Main, nail.Side) { IsRoundedAsPrinted = true };
        Assert.Equal(105, printed.Reference());
    }

    /// <summary>Nails, 1-1/2 in. side member, G of 0.50 (NDS nail tables, from memory), to 1 lb.</summary>
    [Theory]
    [InlineData(0.162, 141)]
    [InlineData(0.148, 118)]
    [InlineData(0.135, 103)]
    public void Nails_of_the_table(double diameter, int strength)
    {
        var wood = new WoodMember(Gravity(0.5), In(1.5), 0);
        Assert.Equal(strength, new WoodConnection(new(DowelKind.Nail, In(diameter)), wood, wood) { IsRoundedAsPrinted = true }.Reference());
    }

    /// <summary>
    /// Screw of a solved example, read in a secondary source: 0.190 in., root 0.152 in., double shear, mode IV: 233.71 lb. It takes the nominal diameter into K_D. Our reading of
    /// 12.3.7 takes the root, which gives 254.96 lb (constructed). The two differ by the ratio of the K_D and by nothing else.
    /// </summary>
    [Fact]
    public void Wood_screw_in_double_shear_does_not_agree_in_the_reduction_term()
    {
        const double Published = 233.71;
        var screw = new DowelFastener(DowelKind.WoodScrew, In(0.19));
        var wood = Gravity(0.55);
        var connection = new WoodConnection(screw, new WoodMember(wood, In(3), 0), new WoodMember(wood, In(1.31), 0)) { IsDoubleShear = true };

        ConnectionStrength ours = connection.Lateral(Plain);
        Assert.Equal(YieldMode.TwoHinges, ours.Governing);
        Assert.Equal(254.96, Pounds(ours.Reference), 0.00501);
        Assert.NotEqual(Published, Pounds(ours.Reference), 1.0);
        Assert.Equal(Published, Pounds(ours.Reference) * 2.2 / ((10 * 0.19) + 0.5), 0.00501);
    }

    /// <summary>
    /// Sill bolt of 1/2 in., Southern Pine, perpendicular, of an edition before 2005: 400 lb, read in a weak source. It follows with 6000 psi in the concrete, which older
    /// editions had (from memory), and not with 7500 psi.
    /// </summary>
    [Fact]
    public void Older_edition_had_weaker_concrete()
    {
        var old = new WoodConnection(
            new(DowelKind.Bolt, In(0.5)), new TestedMember(Psi(6000), In(6)), new WoodMember(Gravity(0.55), In(1.5), 90)) { IsRoundedAsPrinted = true };
        Assert.Equal(400, old.Reference());
        Assert.Equal(410, Sill(0.5, 0.55, 1.5, 90).Reference());
    }

    /// <summary>Bearing strength of steel: factors read in a lecture page; 87,000 psi follows for 58 ksi, 61,875 psi for 45 ksi.</summary>
    [Theory]
    [InlineData(58_000, false, 87_000)]
    [InlineData(45_000, true, 61_875)]
    public void Steel(double ultimate, bool isColdFormed, double bearing)
    {
        var connection = new WoodConnection(
            new(DowelKind.Bolt, In(0.5)), new WoodMember(Gravity(0.5), In(3.5), 0), new SteelBearingMember(Psi(ultimate), In(0.25), isColdFormed));
        Assert.Equal(bearing, connection.Lateral(Plain).Step("F_es"), 1e-6);
    }

    /// <summary>A bolt's thread that bears: D_r bends, D of the table stays for F_e; between 1/4 in. nominal and a smaller root K_D and K_θ count together.</summary>
    [Fact]
    public void Small_root_of_a_larger_screw()
    {
        var lag = new WoodConnection(new(DowelKind.LagScrew, In(0.25)), new WoodMember(Gravity(0.5), In(2), 90), new WoodMember(Gravity(0.5), In(1.5), 0));
        ConnectionStrength ours = lag.Lateral(Plain);
        Assert.Equal((10 * 0.173) + 0.5, ours.Step("K_D"), 1e-12);
        Assert.Equal(1.25 * ours.Step("K_D"), ours.Step("R_d"), 1e-12);
        Assert.Equal(6100 * Math.Pow(0.5, 1.45) / 0.5, ours.Step("F_em"), 1e-9);
        Assert.Equal(70_000, ours.Step("F_yb"));

        var full = new WoodConnection(new(DowelKind.LagScrew, In(0.25)) { HasFullBody = true }, lag.Main, lag.Side);
        Assert.Equal(4 * 1.25, full.Lateral(Plain).Step("R_d_I"), 1e-12);
    }

    [Fact]
    public void F_yb_by_test_uses_the_plastic_section()
    {
        // By hand: M_y of 120 lbf-in on D of 0.2 in.: 120 / (0.008 / 6) = 90,000 psi.
        Assert.Equal(90_000, DowelFastener.BendingYieldByTest(Torque.FromPoundForceInches(120), In(0.2)).PoundsForcePerSquareInch, 1e-6);
    }

    [Fact]
    public void What_the_standard_does_not_cover_has_no_strength()
    {
        ConnectionStrength thick = Sill(1.125, 0.5, 1.5, 0).Lateral(Plain);
        Assert.Null(thick.Reference);
        Assert.Null(thick.Adjusted);
        Assert.Contains("1 in.", thick.NotCovered, StringComparison.Ordinal);

        var weak = new WoodConnection(new(DowelKind.Bolt, In(0.5)), new ConcreteBearingMember(Psi(2000), In(6)), new WoodMember(Gravity(0.5), In(1.5), 0));
        Assert.Contains("2500", weak.Lateral(Plain).NotCovered, StringComparison.Ordinal);
    }
}
