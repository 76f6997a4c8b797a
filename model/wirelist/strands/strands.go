// Package strands reads how a wire is made of strands, beside its size or alone: how many there are and how thick each is, in mm.
//
//	4 (56/0.30)        28/0.30 2.0mm²        1.0 mm² (32 x 0.2)        14/0.30
//
// It knows numbers and their units; what a size is called is for package value.
package strands

import (
	"math"
	"strconv"
	"strings"
)

// sold is the areas that wires are sold by, in mm². From memory, no source.
var sold = []float64{0.14, 0.22, 0.25, 0.34, 0.35, 0.5, 0.65, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 4.5, 5, 6, 7, 8, 8.5, 10, 16, 20, 25, 35,
	40, 50, 60, 70, 95, 120}

const (
	apart    = 0.1  // of the area: 14 strands of 0.30 are 0.99 mm² and are sold as 1 (no source)
	near     = 0.04 // of the area, where nothing but the strands says it (no source)
	fewest   = 7    // strands that stand alone: what is less reads as a cable, "4/0.5" (no source)
	thinnest = 0.05 // mm: what is less is in inches, "44/.012" (no source)
)

// Cut parts a text in the size of a wire and its strands. size is in mm²; "" where the text is none of these, or where the area of the
// strands is another. "44/.012" is of inches, and no size.
func Cut(text string) (size, made string) {
	text = strings.TrimSpace(text)
	if !hasDecimal(text) || strings.IndexAny(text, "/x×X*") < 1 {
		return "", "" // as nearly every text
	}
	for _, p := range parts(text) {
		area := areaOf(p[1])
		if area == 0 {
			continue
		}
		if p[0] == "" {
			if s := nearest(area); s != "" && standAlone(p[1]) {
				return s + " mm²", p[1]
			}
			continue
		}
		number, unit := withoutUnit(p[0])
		of, ok := parse(number)
		if ok && math.Abs(area-of) <= apart*of && (unit || strings.HasSuffix(text, ")")) {
			return number + " mm²", p[1]
		}
	}
	return "", ""
}

// hasDecimal reports whether a text has a number with decimals, which the thickness of a strand always is: "28/0.30", "32 x 0,2".
func hasDecimal(text string) bool {
	for i := 0; i+1 < len(text); i++ {
		if (text[i] == '.' || text[i] == ',') && text[i+1] >= '0' && text[i+1] <= '9' {
			return true
		}
	}
	return false
}

// parts is each way in which a text could be a size and the strands beside it.
func parts(text string) (all [][2]string) {
	all = append(all, [2]string{"", text})
	if open := strings.LastIndexByte(text, '('); open > 0 && strings.HasSuffix(text, ")") {
		front, in := strings.TrimSpace(text[:open]), strings.TrimSpace(text[open+1:len(text)-1])
		return append(all, [2]string{front, in}, [2]string{in, front})
	}
	for i := range len(text) {
		if text[i] != ' ' {
			continue
		}
		front, back := strings.Trim(text[:i], " ,;="), strings.Trim(text[i:], " ,;=")
		all = append(all, [2]string{back, front}, [2]string{front, back})
	}
	return all
}

// areaOf is the area of strands in mm²; 0 where the text is none.
func areaOf(made string) float64 {
	alone := made
	for _, unit := range []string{"mm", "strands", "str."} {
		alone = strings.TrimSpace(strings.TrimSuffix(alone, unit))
	}
	at := strings.IndexAny(alone, "/x×X*")
	if at < 1 {
		return 0
	}
	n, err := strconv.Atoi(strings.TrimSpace(alone[:at]))
	number := strings.TrimSpace(strings.TrimLeft(alone[at:], "/x×X*"))
	thick, ok := parse(number)
	if err != nil || !ok || n < 2 || n > 5000 || thick < thinnest || thick > 3 {
		return 0
	}
	return float64(n) * math.Pi / 4 * thick * thick
}

// Inches reports whether a text is strands whose thickness is in inches, "44/.012".
func Inches(text string) bool {
	n, thick, ok := strings.Cut(strings.TrimRight(strings.TrimSpace(text), "\"”in. "), "/")
	many, err := strconv.Atoi(strings.TrimSpace(n))
	v, is := parse(thick)
	return ok && err == nil && many >= fewest && is && v < thinnest && strings.ContainsAny(thick, ".,")
}

// nearest is the size that an area is sold as; "" where it is none.
func nearest(area float64) string {
	for _, s := range sold {
		if math.Abs(area-s) <= near*s {
			return strconv.FormatFloat(s, 'f', -1, 64)
		}
	}
	return ""
}

// standAlone reports whether strands without a size read as nothing else: with a stroke, a thickness with decimals, and many enough.
func standAlone(made string) bool {
	n, thick, ok := strings.Cut(made, "/")
	many, err := strconv.Atoi(strings.TrimSpace(n))
	return ok && err == nil && many >= fewest && strings.ContainsAny(thick, ".,")
}

// withoutUnit takes the unit off a size, and reports whether it has one.
func withoutUnit(text string) (number string, unit bool) {
	for _, u := range []string{"mm2", "mm²", "mm^2", "qmm", "sqmm", "sq mm", "sq. mm"} {
		if n, ok := strings.CutSuffix(text, u); ok {
			return strings.TrimSpace(n), true
		}
	}
	return strings.TrimSpace(strings.TrimSuffix(text, "²")), strings.HasSuffix(text, "²")
}

// parse reads a number with a point or a comma for decimals.
func parse(text string) (float64, bool) {
	if text == "" || strings.Trim(text, "0123456789.,") != "" {
		return 0, false
	}
	v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	return v, err == nil && v > 0
}
