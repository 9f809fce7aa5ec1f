using System.Collections.Immutable;
using System.Globalization;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>
/// A formula as a reader takes it from the printed line. It is read from the text alone, by the rules of a textbook and nothing else:
/// <c>·</c> or a blank multiplies, what follows <c>/</c> is one name, one number or one bracket, and nothing follows that; <c>√</c> reaches over
/// the next name, number or bracket; a number's digits may stand in groups of three. A text that could be read in two ways is an error.
/// </summary>
internal abstract record ShownFormula
{
    /// <summary>A number with its printed digits.</summary>
    public sealed record Number(string Text) : ShownFormula
    {
        public double Value { get; } = double.Parse(Text.Replace(" ", "", StringComparison.Ordinal), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

        /// <summary>Half a unit of the last digit that is printed.</summary>
        public double HalfUnit { get; } = 0.5 * Math.Pow(10, -(Text.Contains('.', StringComparison.Ordinal) ? Text.Length - 1 - Text.IndexOf('.', StringComparison.Ordinal) : 0));
    }

    public sealed record Symbol(string Name) : ShownFormula;

    public sealed record Sum(ShownFormula Left, bool IsDifference, ShownFormula Right) : ShownFormula;

    public sealed record Product(ShownFormula Left, ShownFormula Right) : ShownFormula;

    public sealed record Quotient(ShownFormula Top, ShownFormula Bottom) : ShownFormula;

    public sealed record Power(ShownFormula Base, double Exponent) : ShownFormula;

    public sealed record Root(ShownFormula Inner) : ShownFormula;

    public sealed record Extreme(bool IsMaximum, ShownFormula First, ShownFormula Second) : ShownFormula;

    /// <summary>Reads a text.</summary>
    /// <param name="text">The formula.</param>
    /// <param name="products">Names on the sheet that are written as a product, such as <c>φ N_cb</c>.</param>
    /// <exception cref="FormatException">Not a formula, or one that reads two ways.</exception>
    public static ShownFormula Read(string text, params IEnumerable<string> products)
    {
        var reader = new Reader(text, [.. products]);
        ShownFormula formula = reader.ReadSum();
        return reader.IsAtEnd ? formula : throw reader.Unreadable("the end");
    }

    /// <summary>The names and numbers, from left to right.</summary>
    public IEnumerable<ShownFormula> Leaves() => this switch
    {
        Sum s => s.Left.Leaves().Concat(s.Right.Leaves()),
        Product p => p.Left.Leaves().Concat(p.Right.Leaves()),
        Quotient q => q.Top.Leaves().Concat(q.Bottom.Leaves()),
        Power p => p.Base.Leaves(),
        Root r => r.Inner.Leaves(),
        Extreme e => e.First.Leaves().Concat(e.Second.Leaves()),
        _ => [this],
    };

    /// <summary>The formula with every name and number replaced by a mark: two texts of one formula have one shape.</summary>
    public string Shape() => this switch
    {
        Sum s => $"({s.Left.Shape()} {(s.IsDifference ? '-' : '+')} {s.Right.Shape()})",
        Product p => $"({p.Left.Shape()} * {p.Right.Shape()})",
        Quotient q => $"({q.Top.Shape()} / {q.Bottom.Shape()})",
        Power p => $"({p.Base.Shape()} ^ {p.Exponent.ToString("R", CultureInfo.InvariantCulture)})",
        Root r => $"root({r.Inner.Shape()})",
        Extreme e => $"{(e.IsMaximum ? "max" : "min")}({e.First.Shape()}, {e.Second.Shape()})",
        _ => "x",
    };

    /// <summary>The value where each leaf is given as an interval.</summary>
    public Interval Evaluate(Func<ShownFormula, Interval> leaf) => this switch
    {
        Sum { IsDifference: true } s => s.Left.Evaluate(leaf) - s.Right.Evaluate(leaf),
        Sum s => s.Left.Evaluate(leaf) + s.Right.Evaluate(leaf),
        Product p => p.Left.Evaluate(leaf) * p.Right.Evaluate(leaf),
        Quotient q => q.Top.Evaluate(leaf) / q.Bottom.Evaluate(leaf),
        Power p => p.Base.Evaluate(leaf).Raised(p.Exponent),
        Root r => r.Inner.Evaluate(leaf).Raised(0.5),
        Extreme e => e.IsMaximum ? Interval.Max(e.First.Evaluate(leaf), e.Second.Evaluate(leaf)) : Interval.Min(e.First.Evaluate(leaf), e.Second.Evaluate(leaf)),
        _ => leaf(this),
    };

    private sealed class Reader(string text, ImmutableArray<string> products)
    {
        private int _at;

        /// <summary>Where a sum starts: only there may a number carry a minus sign without brackets of its own.</summary>
        private int _startOfSum = -1;

        public bool IsAtEnd => _at == text.Length;

        public FormatException Unreadable(string wanted) => new($"\"{text}\": {wanted} expected at \"{text[_at..]}\"");

        public ShownFormula ReadSum()
        {
            _startOfSum = _at;
            ShownFormula sum = ReadProduct();
            while (true)
            {
                if (Take(" + "))
                {
                    sum = new Sum(sum, false, ReadProduct());
                }
                else if (Take(" − "))
                {
                    sum = new Sum(sum, true, ReadProduct());
                }
                else
                {
                    return sum;
                }
            }
        }

        private ShownFormula ReadProduct()
        {
            ShownFormula product = ReadPower(out bool isNumber, out _);
            while (!IsAtEnd && text[_at] == ' ' && !Sees(" + ") && !Sees(" − "))
            {
                if (Take(" / "))
                {
                    product = new Quotient(product, ReadPower(out _, out bool isProduct));
                    return isProduct || Sees(" · ") || Sees(" / ") || (Sees(" ") && !Sees(" + ") && !Sees(" − "))
                        ? throw new FormatException($"\"{text}\": what stands under the fraction line can be read in two ways")
                        : product;
                }

                bool isDot = Take(" · ");
                if (!isDot)
                {
                    Require(" ");
                }

                bool before = isNumber;
                int start = _at;
                ShownFormula factor = ReadPower(out isNumber, out _);
                if (!isDot && char.IsAsciiDigit(text[start]))
                {
                    throw new FormatException($"\"{text}\": a number follows {(before ? "a number" : "a name")} without a dot");
                }

                product = new Product(product, factor);
            }

            return product;
        }

        private ShownFormula ReadPower(out bool isNumber, out bool isProduct)
        {
            bool isRoot = Take("√");
            bool isNegative = Sees("-");
            ShownFormula formula = ReadAtom(out isNumber, out isProduct);
            if (isRoot)
            {
                if (isProduct || Sees("²") || Sees("³") || Sees("^"))
                {
                    throw new FormatException($"\"{text}\": how far the root reaches can be read in two ways");
                }

                return new Root(formula);
            }

            double exponent = Take("²") ? 2 : Take("³") ? 3 : Take("^(") ? ReadExponentFraction() : Take("^") ? ReadExponent() : double.NaN;
            return double.IsNaN(exponent) ? formula
                : isProduct || isNegative ? throw new FormatException($"\"{text}\": what is raised can be read in two ways")
                : new Power(formula, exponent);
        }

        private double ReadExponent()
        {
            int start = _at;
            ReadDigits();
            ReadFraction();
            return new Number(text[start.._at]).Value;
        }

        private double ReadExponentFraction()
        {
            double top = new Number(ReadDigits()).Value;
            Require("/");
            double bottom = new Number(ReadDigits()).Value;
            Require(")");
            return top / bottom;
        }

        private ShownFormula ReadAtom(out bool isNumber, out bool isProduct)
        {
            isNumber = isProduct = false;
            if (Take("min(") || Take("max("))
            {
                bool isMaximum = text[_at - 3] == 'a';
                ShownFormula first = ReadSum();
                Require(", ");
                ShownFormula second = ReadSum();
                Require(")");
                return new Extreme(isMaximum, first, second);
            }

            if (Take("("))
            {
                ShownFormula inner = ReadSum();
                Require(")");
                return inner;
            }

            if (!IsAtEnd && (char.IsAsciiDigit(text[_at]) || (text[_at] == '-' && _at == _startOfSum)))
            {
                isNumber = true;
                return ReadNumber();
            }

            foreach (string product in products)
            {
                if (Sees(product) && (_at + product.Length == text.Length || !IsOfName(_at + product.Length)))
                {
                    _at += product.Length;
                    isProduct = true;
                    return new Symbol(product);
                }
            }

            int start = _at;
            while (!IsAtEnd && IsOfName(_at))
            {
                _at++;
            }

            return _at > start && char.IsLetter(text[start]) ? new Symbol(text[start.._at]) : throw Unreadable("a name, a number or a bracket");
        }

        /// <summary>Letters, digits, underline and prime; a comma, a plus or a minus only inside a subscript: <c>c_a,min</c>, <c>c_+x</c>.</summary>
        private bool IsOfName(int at) => at < text.Length && (
            char.IsLetter(text[at]) || char.IsAsciiDigit(text[at]) || text[at] is '_' or '\''
            || (text[at] is ',' or '+' or '−' && at + 1 < text.Length && char.IsLetterOrDigit(text[at + 1])));

        private Number ReadNumber()
        {
            int start = _at;
            Take("-");
            int first = _at;
            ReadDigits();
            if (_at - first <= 3)
            {
                while (IsGroup(_at))
                {
                    _at += 4;
                }
            }

            ReadFraction();
            return new Number(text[start.._at]);

            bool IsGroup(int at) => at + 3 < text.Length && text[at] == ' ' && char.IsAsciiDigit(text[at + 1]) && char.IsAsciiDigit(text[at + 2]) && char.IsAsciiDigit(text[at + 3])
                && (at + 4 == text.Length || !char.IsAsciiDigit(text[at + 4]));
        }

        private void ReadFraction()
        {
            if (_at + 1 < text.Length && text[_at] == '.' && char.IsAsciiDigit(text[_at + 1]))
            {
                _at++;
                ReadDigits();
            }
        }

        private string ReadDigits()
        {
            int start = _at;
            while (!IsAtEnd && char.IsAsciiDigit(text[_at]))
            {
                _at++;
            }

            return _at > start ? text[start.._at] : throw Unreadable("a digit");
        }

        private bool Sees(string what) => text.AsSpan(_at).StartsWith(what, StringComparison.Ordinal);

        private bool Take(string what)
        {
            if (!Sees(what))
            {
                return false;
            }

            _at += what.Length;
            return true;
        }

        private void Require(string what)
        {
            if (!Take(what))
            {
                throw Unreadable($"\"{what}\"");
            }
        }
    }
}

/// <summary>All values between two bounds, the bounds among them, and how large the numbers were that met on the way: cancellation is no error of the text.</summary>
internal readonly record struct Interval(double Low, double High, double Size)
{
    public static Interval Of(double value) => new(value, value, Math.Abs(value));

    public static Interval Around(double value, double half) => new(value - half, value + half, Math.Abs(value));

    public static Interval operator +(Interval a, Interval b) => new(a.Low + b.Low, a.High + b.High, a.Size + b.Size);

    public static Interval operator -(Interval a, Interval b) => new(a.Low - b.High, a.High - b.Low, a.Size + b.Size);

    public static Interval operator *(Interval a, Interval b)
    {
        double p = a.Low * b.Low, q = a.Low * b.High, r = a.High * b.Low, s = a.High * b.High;
        return new(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)), a.Size * b.Size);
    }

    public static Interval operator /(Interval a, Interval b)
    {
        if (b.Low <= 0 && b.High >= 0)
        {
            return new(double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity);
        }

        // The relative uncertainty of a difference under the line grows by what cancelled in it.
        double least = Math.Min(Math.Abs(b.Low), Math.Abs(b.High));
        return a * new Interval(1 / b.High, 1 / b.Low, b.Size / (least * least));
    }

    public static Interval Min(Interval a, Interval b) => new(Math.Min(a.Low, b.Low), Math.Min(a.High, b.High), Math.Max(a.Size, b.Size));

    public static Interval Max(Interval a, Interval b) => new(Math.Max(a.Low, b.Low), Math.Max(a.High, b.High), Math.Max(a.Size, b.Size));

    /// <summary>To a power: a whole one of any number, another one of what is not below 0.</summary>
    public Interval Raised(double exponent)
    {
        if (exponent == Math.Floor(exponent))
        {
            double a = Math.Pow(Low, exponent), b = Math.Pow(High, exponent);
            bool crosses = Low < 0 && High > 0 && exponent % 2 == 0;
            return new(crosses ? 0 : Math.Min(a, b), Math.Max(a, b), Math.Pow(Size, exponent));
        }

        return new(Math.Pow(Math.Max(Low, 0), exponent), Math.Pow(Math.Max(High, 0), exponent), Math.Pow(Size, exponent));
    }

    /// <summary>Whether the two have a value in common, within 1e-12 of the size of the numbers that met.</summary>
    public bool Meets(Interval other)
    {
        double slack = 1e-12 * Math.Max(Size, other.Size);
        return Low - slack <= other.High && other.Low <= High + slack;
    }
}
