package wire

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"contralay/model/unit"
)

// AWG is a size of the American wire gauge: 43 … 1, 0 is 1/0, −1 is 2/0, −2 is
// 3/0 and −3 is 4/0.
type AWG int

// The range of sizes. ASTM B258-02 rounds sizes larger than No. 44 to
// 0.0001 in; smaller ones follow another rule, and no harness uses them.
const (
	LargestAWG  AWG = -3
	SmallestAWG AWG = 43
)

// ErrAWG is wrapped by every error of ParseAWG.
var ErrAWG = errors.New("not an AWG size from 4/0 to 43")

// ParseAWG reads a size as wire lists write it: "22", "0", "00", "1/0", "4/0".
// The error wraps ErrAWG and carries the text.
func ParseAWG(text string) (AWG, error) {
	fail := func() (AWG, error) { return 0, fmt.Errorf("%q: %w", text, ErrAWG) }
	if n, ok := strings.CutSuffix(text, "/0"); ok {
		if len(n) != 1 || n[0] < '1' || n[0] > '4' {
			return fail()
		}
		return AWG('1') - AWG(n[0]), nil
	}
	switch text {
	case "0", "00", "000", "0000":
		return AWG(1 - len(text)), nil
	}
	if text == "" || text[0] < '1' || text[0] > '9' {
		return fail()
	}
	n, err := strconv.Atoi(text)
	if err != nil || AWG(n) > SmallestAWG {
		return fail()
	}
	return AWG(n), nil
}

// String writes the size as ParseAWG reads it: "22", "1/0".
func (a AWG) String() string {
	if a <= 0 && a >= LargestAWG {
		return strconv.Itoa(1-int(a)) + "/0"
	}
	return strconv.Itoa(int(a))
}

// Diameter is the unrounded diameter of the solid wire in mm:
//
//	d(n) = 0.005 in · 92^((36 − n)/39)
//
// n the AWG number, 4/0 being −3. The anchors are exact: No. 36 is 0.005 in and
// 4/0 is 0.46 in. False outside LargestAWG … SmallestAWG.
//
// Source: ASTM B258-02, as quoted in an encyclopaedia.
func (a AWG) Diameter() (unit.Millimetre, bool) {
	in, ok := a.inches()
	return unit.Millimetre(in * unit.MillimetrePerInch), ok
}

// Rounded is the diameter as ASTM tabulates it, in mm: Diameter rounded to
// 0.0001 in. Strands of a stranded conductor are of this diameter.
//
// Source: ASTM B258-02 (at most 4 significant figures and 0.0001 in).
func (a AWG) Rounded() (unit.Millimetre, bool) {
	in, ok := a.inches()
	return unit.Millimetre(unit.RoundHalfUp(in, 0.0001) * unit.MillimetrePerInch), ok
}

// Area is the cross-section of the solid wire in mm², from the unrounded
// diameter. It is not the area of a stranded wire of the same number: the
// aerospace strandings differ by −10 % to +20 %.
func (a AWG) Area() (unit.SquareMM, bool) {
	d, ok := a.Diameter()
	return circle(d), ok
}

// CircularMils is the cross-section of the solid wire as ASTM prints it: the
// square of the rounded diameter in thousandths of an inch. For 3/0 that is
// 167 772, while the unrounded diameter gives 167 806; both are in use.
//
// Source: ASTM B33-04 table 1.
func (a AWG) CircularMils() (unit.CircularMil, bool) {
	d, ok := a.Rounded()
	return circle(d).CircularMils(), ok
}

func (a AWG) inches() (float64, bool) {
	if a < LargestAWG || a > SmallestAWG {
		return 0, false
	}
	return 0.005 * math.Pow(92, float64(36-a)/39), true
}

func circle(d unit.Millimetre) unit.SquareMM {
	return unit.SquareMM(math.Pi / 4 * float64(d) * float64(d))
}
