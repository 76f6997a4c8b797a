package unit

import (
	"regexp"
	"strconv"
	"strings"
)

// Sentences about a harness are written in millimetres, once, wherever they are shown. Says
// puts them into the system of the screen.

// inSentence finds a length in a sentence: "3.18 mm", "25 to 50 mm", "25.0 and 50 mm" being
// two. A cross-section in mm² is none, and neither is a number inside a word.
var inSentence = regexp.MustCompile(`(^|[^\w.,])((-?\d+(?:\.\d+)?) to )?(-?\d+(?:\.\d+)?) mm\b([²/]?)`)

// Says is a sentence in this system: each length in mm becomes one in inches, whole
// millimetres in sixteenths and tenths or hundredths to 0.001 in. What is at least so long is
// not rounded down, and what is at most so long not up. What stands between quotes is what
// somebody typed, and stays.
func (s System) Says(text string) string {
	if s != Inch || !strings.Contains(text, " mm") {
		return text
	}
	parts := strings.Split(text, `"`)
	for k := 0; k < len(parts); k += 2 {
		parts[k] = inches(parts[k])
	}
	return strings.Join(parts, `"`)
}

func inches(text string) string {
	var b strings.Builder
	from := 0
	for _, at := range inSentence.FindAllStringSubmatchIndex(text, -1) {
		part := func(n int) string {
			if at[2*n] < 0 {
				return ""
			}
			return text[at[2*n]:at[2*n+1]]
		}
		if part(5) != "" {
			continue
		}
		b.WriteString(text[from:at[0]] + part(1))
		if part(2) != "" {
			b.WriteString(inInches(part(3), nearest) + " to ")
		}
		b.WriteString(inInches(part(4), side(text[:at[0]]+part(1), text[at[1]:])) + " in")
		from = at[1]
	}
	return b.String() + text[from:]
}

// rounding is which way a length in a sentence may be rounded.
type rounding int

const (
	nearest rounding = iota
	up
	down
)

// side is which way a length may be rounded by the words before and after it.
func side(before, after string) rounding {
	for _, word := range []string{"at least ", "Allow ", "no tighter than ", "cut "} {
		if strings.HasSuffix(before, word) {
			return up
		}
	}
	switch {
	case strings.HasPrefix(after, " at least"), strings.HasPrefix(after, " is wanted"):
		return up
	case strings.HasPrefix(after, " at most"), strings.HasSuffix(before, "at most "):
		return down
	}
	return nearest
}

// inInches is a number of millimetres in inches, as fine as it was written.
func inInches(mm string, r rounding) string {
	v, err := strconv.ParseFloat(mm, 64)
	if err != nil {
		return mm
	}
	step := 1.0 / 16
	fine := strings.Contains(mm, ".")
	if fine {
		step = 0.001
	}
	switch in := v / MillimetrePerInch; r {
	case up:
		v = UpTo(in, step)
	case down:
		v = -UpTo(-in, step)
	default:
		v = in
	}
	if fine {
		return fixed(v, 3)
	}
	return sixteenths(v)
}
