package unit

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// System is how lengths are printed and typed.
type System int

// The two systems. The zero value is metric.
const (
	MM System = iota
	Inch
)

// ParseSystem reads the file's word for a system: "mm" or "in".
func ParseSystem(s string) (System, error) {
	switch s {
	case "", "mm":
		return MM, nil
	case "in":
		return Inch, nil
	}
	return MM, fmt.Errorf("units %q: use \"mm\" or \"in\"", s)
}

// Name is the unit as it stands beside a value.
func (s System) Name() string {
	if s == Inch {
		return "in"
	}
	return "mm"
}

// Diameter prints to 0.1 mm, or to 0.001 in.
func (s System) Diameter(v Millimetre) string {
	if s == Inch {
		return strconv.FormatFloat(float64(v)/MillimetrePerInch, 'f', 3, 64)
	}
	return fixed(float64(v), 1)
}

// Fine prints to 0.01 mm, or to 0.001 in: for small differences and for the why.
func (s System) Fine(v Millimetre) string {
	if s == Inch {
		return strconv.FormatFloat(float64(v)/MillimetrePerInch, 'f', 3, 64)
	}
	return fixed(float64(v), 2)
}

// Length prints whole millimetres, or inches in sixteenths.
func (s System) Length(v Millimetre) string {
	if s == Inch {
		return sixteenths(float64(v) / MillimetrePerInch)
	}
	return fixed(float64(v), 0)
}

// AtLeast prints what must not be less, a bend or a length to cut: as Length does, but a
// sixteenth of an inch is 1.6 mm, and it is never rounded down.
func (s System) AtLeast(v Millimetre) string {
	if s == Inch {
		return sixteenths(UpTo(float64(v)/MillimetrePerInch, 1.0/16))
	}
	return s.Length(v)
}

// Parse reads a length typed in this system. Both decimal marks are read.
func (s System) Parse(text string) (Millimetre, error) {
	v, err := ParseNumber(text)
	if err != nil {
		return 0, err
	}
	if s == Inch {
		v = math.Copysign(RoundHalfUp(math.Abs(v)*MillimetrePerInch, 0.001), v) // 0.3 in is 7.62 mm and not a hair less
	}
	if !Finite(v) { // it was the largest there is, in inches
		return 0, fmt.Errorf("%q: %w", text, ErrNotANum)
	}
	return Millimetre(v), nil
}

// fixed prints v with n decimals, halves away from zero as a person rounds, and never "-0".
func fixed(v float64, n int) string {
	p := math.Pow(10, float64(n))
	r := math.Copysign(math.Floor(math.Abs(v)*p+0.5+1e-9)/p, v)
	if r == 0 {
		r = 0
	}
	return strconv.FormatFloat(r, 'f', n, 64)
}

// Fixed prints the number of a quantity, or a pure number, with n decimals, halves away from zero.
func Fixed[T ~float64](v T, n int) string { return fixed(float64(v), n) }

func sixteenths(in float64) string {
	sign := ""
	if in < 0 {
		sign, in = "-", -in
	}
	n := int(math.Floor(in*16 + 0.5))
	whole, part := n/16, n%16
	den := 16
	for part != 0 && part%2 == 0 {
		part, den = part/2, den/2
	}
	switch {
	case part == 0:
		return sign + strconv.Itoa(whole)
	case whole == 0:
		return fmt.Sprintf("%s%d/%d", sign, part, den)
	}
	return fmt.Sprintf("%s%d %d/%d", sign, whole, part, den)
}

// Errors of ParseNumber.
var (
	ErrEmpty    = errors.New("nothing was typed")
	ErrNotANum  = errors.New("this is not a number")
	ErrTwoMarks = errors.New("there is more than one decimal mark")
)

// ParseNumber reads a number as typed on a keypad or sent by a calliper: digits,
// one decimal point or comma, an optional sign. A fraction "3/8" or "1 3/8" is
// read as well, and a measurement over a count, "10.8/10". No thousands separators, no exponent, no NaN.
func ParseNumber(text string) (float64, error) {
	t := strings.TrimSpace(text)
	if t == "" {
		return 0, ErrEmpty
	}
	if strings.Contains(t, "/") {
		return parseFraction(t)
	}
	if strings.Count(t, ".")+strings.Count(t, ",") > 1 {
		return 0, fmt.Errorf("%q: %w", text, ErrTwoMarks)
	}
	t = strings.Replace(t, ",", ".", 1)
	for i, r := range t {
		if (r < '0' || r > '9') && r != '.' && (i != 0 || (r != '-' && r != '+')) {
			return 0, fmt.Errorf("%q: %w", text, ErrNotANum)
		}
	}
	v, err := strconv.ParseFloat(t, 64)
	if err != nil || !Finite(v) {
		return 0, fmt.Errorf("%q: %w", text, ErrNotANum)
	}
	return v, nil
}

func parseFraction(t string) (float64, error) {
	whole, minus := 0.0, strings.HasPrefix(t, "-")
	if i := strings.LastIndexByte(t, ' '); i >= 0 {
		w, err := ParseNumber(t[:i])
		if err != nil || w != math.Trunc(w) {
			return 0, fmt.Errorf("%q: %w", t, ErrNotANum)
		}
		whole, t = w, strings.TrimSpace(t[i+1:])
	}
	a, b, ok := strings.Cut(t, "/")
	if ok && whole == 0 && strings.ContainsAny(a, ".,") { // ten side by side: 10.8/10
		n, err1 := ParseNumber(a)
		d, err2 := strconv.ParseUint(b, 10, 31)
		if err1 != nil || err2 != nil || d == 0 {
			return 0, fmt.Errorf("%q: %w", t, ErrNotANum)
		}
		return n / float64(d), nil
	}
	n, err1 := strconv.ParseUint(a, 10, 31)
	d, err2 := strconv.ParseUint(b, 10, 31)
	if !ok || err1 != nil || err2 != nil || d == 0 {
		return 0, fmt.Errorf("%q: %w", t, ErrNotANum)
	}
	f := float64(n) / float64(d)
	if minus { // -1 1/2, and -0 1/2 too
		f = -f
	}
	return whole + f, nil
}
