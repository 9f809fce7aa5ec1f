using ConcreteAttach.Calculation;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>Symbols: stable ids in ASCII, and how they are printed. A prime belongs to the base letter, as the standard prints h'_ef.</summary>
public sealed class SymbolTextTests
{
    [Theory]
    [InlineData("N_b", "N_b", @"N_{\mathrm{b}}")]
    [InlineData("n", "n", "n")]
    [InlineData("h_ef", "h_ef", @"h_{\mathrm{ef}}")]
    [InlineData("A_Nco", "A_Nco", @"A_{\mathrm{Nco}}")]
    [InlineData("psi_ec_N", "ψ_ec,N", @"\psi_{\mathrm{ec,N}}")]
    [InlineData("psi_ed_Na", "ψ_ed,Na", @"\psi_{\mathrm{ed,Na}}")]
    [InlineData("lambda_a", "λ_a", @"\lambda_{\mathrm{a}}")]
    [InlineData("lambda", "λ", @"\lambda")]
    [InlineData("phi", "φ", @"\phi")]
    [InlineData("tau_cr", "τ_cr", @"\tau_{\mathrm{cr}}")]
    [InlineData("beta_x", "β_x", @"\beta_{\mathrm{x}}")]
    [InlineData("theta", "θ", @"\theta")]
    [InlineData("C_Delta", "C_Δ", @"C_{\mathrm{\Delta}}")]
    [InlineData("C_Delta_end", "C_Δ,end", @"C_{\mathrm{\Delta,end}}")]
    [InlineData("gamma", "γ", @"\gamma")]
    [InlineData("h_ef'", "h'_ef", @"h'_{\mathrm{ef}}")]
    [InlineData("c_a1'", "c'_a1", @"c'_{\mathrm{a1}}")]
    [InlineData("f'_c", "f'_c", @"f'_{\mathrm{c}}")]
    [InlineData("e'_N_x", "e'_N,x", @"e'_{\mathrm{N,x}}")]
    [InlineData("e'_V", "e'_V", @"e'_{\mathrm{V}}")]
    [InlineData("c_a_min", "c_a,min", @"c_{\mathrm{a,min}}")]
    [InlineData("c_+x", "c_+x", @"c_{\mathrm{+x}}")]
    [InlineData("c_-x", "c_−x", @"c_{\mathrm{-x}}")]
    [InlineData("phi N_cb", "φ N_cb", @"\phi\,N_{\mathrm{cb}}")]
    [InlineData("utilization", "utilization", @"\mathrm{utilization}")]
    public void Plain_and_latex(string id, string plain, string latex)
    {
        Assert.Equal(plain, SymbolText.Plain(id));
        Assert.Equal(latex, SymbolText.Latex(id));
    }

    /// <summary>The ids of CONTRACT: two of them never look alike.</summary>
    [Fact]
    public void Two_ids_never_look_alike()
    {
        string[] ids =
        [
            "A_Nc", "A_Nco", "psi_ec_N", "psi_ed_N", "psi_c_N", "psi_cp_N", "N_b", "N_cb", "A_brg", "N_p", "N_sb", "A_Na", "A_Nao", "c_Na", "N_ba", "A_Vc", "A_Vco", "psi_ec_V",
            "psi_ed_V", "psi_c_V", "psi_h_V", "V_b", "V_cb", "V_cp", "N_sa", "V_sa", "phi", "h_ef", "h_ef'", "c_a1", "c_a1'", "e'_N_x", "e'_N_y", "e'_V", "c_a_min", "c_a2", "lambda_a", "l_e",
            "psi_c_P", "psi_ec_Na", "psi_ed_Na", "psi_cp_Na", "N_a", "k_cp",
        ];

        Assert.Equal(ids.Length, ids.Select(SymbolText.Plain).Distinct().Count());
        Assert.Equal(ids.Length, ids.Select(SymbolText.Latex).Distinct().Count());
    }
}
