package value

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"contralay/model/unit"
	"contralay/model/wirelist/table"
)

// LengthUnit is what a length is stated in: "mm", "cm", "m", "in", "ft", or "" where
// nothing says.
type LengthUnit string

// inMM is one of the unit in mm, exact; 0 where it is none.
func (u LengthUnit) inMM() float64 {
	switch u {
	case "mm":
		return 1
	case "cm":
		return 10
	case "m":
		return 1000
	case "in":
		return unit.MillimetrePerInch
	case "ft":
		return 12 * unit.MillimetrePerInch
	}
	return 0
}

// LengthWord is the unit that a folded word stands for, "" for none.
func LengthWord(word string) LengthUnit {
	switch word {
	case "mm", "millimetre", "millimetres", "millimeter", "millimeters":
		return "mm"
	case "cm", "centimetre", "centimetres", "zentimeter":
		return "cm"
	case "m", "mtr", "metre", "metres", "meter", "meters", "metri", "metro", "metros":
		return "m"
	case "in", "inch", "inches", `"`, "zoll", "pouce", "pouces", "pulgadas", "pollici":
		return "in"
	case "ft", "foot", "feet", "'", "fuss", "pieds", "pies", "piedi":
		return "ft"
	}
	return ""
}

// longest is the longest wire that is read, in mm: a hundred metres is no harness of
// a car (no source).
const longest = 100_000

// ParseLength reads "610mm", "24 in", `24"`, "0.58 m", "24 1/2 in", "2' 6\"", "2'-6\"". A
// number without unit takes bare; where that is "" it is not a length. ok is false
// where anything is not understood, below 0 or over 100 m.
func ParseLength(text string, bare LengthUnit, mark Mark) (mm unit.Millimetre, ok bool) {
	var in room
	all := scan(in[:0], table.Fold(text))
	total, parts := 0.0, 0
	sign := "" // the sign or word of the unit before
	last := math.Inf(1)
	for i := 0; i < len(all); {
		if all[i].Kind == '-' && parts > 0 && i+1 < len(all) {
			i++ // 2'-6"
		}
		if all[i].Kind != '0' {
			return 0, false
		}
		v, n, ok := amount(all[i:], mark)
		if !ok {
			u := bare
			if i+1 < len(all) {
				u = LengthWord(all[i+1].Text)
			}
			if v, ok = thousands(all[i].Text); !ok || u != "mm" {
				return 0, false
			}
			n = 1
		}
		i += n
		u := bare
		if i < len(all) {
			sign = all[i].Text
			if u = LengthWord(all[i].Text); u == "" {
				return 0, false
			}
			i++
			if i < len(all) && all[i].Kind == '.' && i+1 == len(all) { // "24 in."
				i++
			}
		} else if sign == "'" {
			u = "in" // 2'6
		} else if parts > 0 {
			return 0, false // 2 ft 6: six what?
		}
		size := u.inMM()
		// Only feet and inches are said together, in that order.
		if size == 0 || size >= last || parts > 0 && u != "in" || parts > 0 && last != LengthUnit("ft").inMM() {
			return 0, false
		}
		total, last, parts = total+v*size, size, parts+1
	}
	if parts == 0 || total > longest {
		return 0, false
	}
	return unit.Millimetre(total), true
}

// LengthWithin reads a length that has more about it: a tolerance behind it, "1200 +50/-0 mm",
// or a word before or behind that says how sure it is, "approx. 900", "900 min". A range,
// "1200-1250", is none.
func LengthWithin(text string, bare LengthUnit, mark Mark) (mm unit.Millimetre, ok bool) {
	s := strings.TrimLeft(strings.Map(PlainSign, table.Fold(text)), "~<>=±≈ ")
	isAbout := func(w string) bool {
		switch strings.Trim(w, ".,()") {
		case "about", "approx", "approximately", "appr", "ca", "circa", "zirka", "etwa", "ungefahr", "environ", "env", "aprox", "min",
			"minimum", "mind", "mindestens", "max", "maximum", "tol", "tolerance", "nominal", "nom", "est", "estimated":
			return true
		}
		return false
	}
	var words []string
	for _, w := range strings.Fields(s) {
		if !isAbout(w) {
			words = append(words, w)
		}
	}
	s = strings.Join(words, " ")
	rest := ""
	for i := 1; i < len(s); i++ {
		if strings.IndexByte("+(*", s[i]) >= 0 || strings.HasPrefix(s[i:], "±") || s[i] == '-' && s[i-1] == ' ' {
			s, rest = strings.TrimSpace(s[:i]), s[i:]
			break
		}
	}
	if all := Scan(rest); len(all) > 0 {
		last := all[len(all)-1]
		for len(all) > 1 && last.Kind == ')' {
			all = all[:len(all)-1]
			last = all[len(all)-1]
		}
		if u := LengthWord(last.Text); u != "" { // 1200 ±10 mm
			bare = u
		}
	}
	return ParseLength(s, bare, mark)
}

// thousands reads "1,200" of millimetres, in a list that does not show what its comma is: a
// wire of 1.2 mm there is none, one of 120.5 mm there is.
func thousands(s string) (float64, bool) {
	if i := strings.IndexByte(s, ','); i != 1 || !couldBeThousands(s, ',') {
		return 0, false
	}
	v, err := unit.ParseNumber(strings.Replace(s, ",", "", 1))
	return v, err == nil
}

// amount reads a number and the fraction behind it: "24", "24 1/2", "24-1/2", "5/8".
func amount(all []Token, mark Mark) (v float64, n int, ok bool) {
	if strings.Contains(all[0].Text, "/") {
		v, ok := fraction(all[0].Text)
		return v, 1, ok
	}
	if v, ok = mark.number(all[0].Text); !ok {
		return 0, 0, false
	}
	n = 1
	if n < len(all) && all[n].Kind == '-' {
		n++
	}
	if n < len(all) && all[n].Kind == '0' && strings.Contains(all[n].Text, "/") && v == math.Trunc(v) {
		f, ok := fraction(all[n].Text)
		return v + f, n + 1, ok
	}
	return v, 1, true
}

// fraction reads a part of an inch as rules have them, halves to sixty-fourths, less than
// one: 1200/1250 is two numbers.
func fraction(text string) (float64, bool) {
	_, under, _ := strings.Cut(text, "/")
	if !slices.Contains([]string{"2", "4", "8", "16", "32", "64"}, under) {
		return 0, false
	}
	v, err := unit.ParseNumber(text)
	return v, err == nil && v >= 0 && v < 1
}

// FormatLength prints a length in a way that ParseLength reads as the same: the
// shortest decimal of its mm, with the unit.
func FormatLength(mm unit.Millimetre) string {
	return strconv.FormatFloat(float64(mm), 'f', -1, 64) + " mm"
}

// MmText is a length to 0.1 mm, for a message.
func MmText(mm unit.Millimetre) string {
	return FormatLength(unit.Millimetre(math.Round(float64(mm)*10) / 10))
}
