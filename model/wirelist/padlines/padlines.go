// Package padlines reads lines that tell a pad of the device above and where it is taken, with a word or a sign in place of an arrow.
package padlines

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// How many words an end has, and how many bytes (no source).
const (
	mostEnd  = 4
	mostHead = 48
)

// Values parts the colour and the size in brackets off a pad, "VCC (red)".
func Values(end string) (bare, colour, size string) {
	if len(end) > 2 && point.IsColour(end) { // "W" is a phase of a motor
		return "", end, ""
	}
	front, values := point.ValuesBehind(end)
	if front == "" || !strings.HasSuffix(end, ")") {
		return end, "", ""
	}
	for _, v := range values {
		if point.IsColourOrLetters(v) {
			colour = v
		} else {
			size = v
		}
	}
	return front, colour, size
}

// Count is how many rows from one on are pads and where each is taken, with a colon, a dash or a word between in place of an arrow;
// 0 where they are none. A device must come again among the places, and one of them must have a cavity: "VIN: input 12 V" is a figure.
// Where the places are pads alone, most pads must be known, a supply must be taken to a supply, and others to pads with a number.
//
//   - VCC: Hub 5V          - VCC - 5V
//   - OUT: Hub A3          - GND - GND
func Count(t *table.Table, i int) int {
	if i > 0 && isPadLine(t, i-1) && t.Rows[i].Line <= t.Rows[i-1].Line+1 {
		return 0
	}
	n, sure, known, alone, supplies, chip := 0, false, 0, 0, 0, 0
	devices := map[string]int{}
	for i+n < len(t.Rows) && isPadLine(t, i+n) && (n == 0 || t.Rows[i+n].Line <= t.Rows[i+n-1].Line+1) {
		pad, far, _ := cut(t.Rows[i+n].Cells[0])
		n++
		if arrow.IsPad(pad) {
			known++
		}
		bare, _ := arrow.RemarkBehind(far, true)
		device, pin, _ := name.SplitEnd(bare)
		if at := strings.LastIndexByte(bare, ' '); pin == "" && at > 0 {
			device, pin = bare[:at], bare[at+1:]
		} else if at < 0 && !runline.IsPlainEnd(bare) {
			alone++
			if pads.IsSupply(pad) && pads.IsSupply(bare) {
				supplies++
			}
			if pads.IsChipPad(bare) || len(bare) > 1 && name.IsCavity(bare) && !arrow.IsPad(bare) {
				chip++
			}
			continue
		}
		sure = sure || name.IsCavity(pin)
		devices[table.Fold(device)]++
	}
	again := 0
	for _, k := range devices {
		again = max(again, k)
	}
	switch {
	case alone > 0 && alone == n && n > 2 && supplies > 0 && 3*chip >= n && 2*known > n:
		return n
	case alone > 0 || n < 2 || !sure || known == 0 || 2*again < n || again < 2:
		return 0
	}
	return n
}

// isPadLine reports whether a row is one such line.
func isPadLine(t *table.Table, i int) bool {
	r := t.Rows[i]
	if len(r.Cells) != 1 || t.Marked && !r.Prose || r.Level > 0 || len(r.Cells[0]) > 2*mostHead {
		return false
	}
	_, _, ok := cut(r.Cells[0])
	return ok
}

// cut parts "VCC: Hub 5V", "SDA to Hub pin 3", "VCC goes to Hub 5V", "SDA - A4" in the pad and its far end.
func cut(text string) (pad, far string, ok bool) {
	for _, mark := range []string{": ", " = ", " – ", " - ", " goes to ", " to ", " connects to ", " an ", " nach ", " vers ", " naar ",
		" al ", " a ", " til ", " till ", " do "} {
		front, back, found := strings.Cut(text, mark)
		bare, _, _ := Values(strings.TrimSpace(front))
		if !found || !arrow.IsPad(bare) && (strings.Trim(mark, " :=-–") != "" || !arrow.IsPadText(bare)) {
			continue
		}
		far = strings.TrimSpace(back)
		end, _ := arrow.RemarkBehind(far, true)
		words := strings.Fields(end)
		if len(words) == 0 || len(words) > mostEnd || len(words) > 1 && strings.Trim(words[0], "0123456789.,") == "" ||
			strings.HasSuffix(far, ".") {
			return "", "", false
		}
		last := words[len(words)-1]
		return strings.TrimSpace(front), far, name.IsCavity(last) || arrow.IsPad(last) || pads.IsChipPad(last)
	}
	return "", "", false
}

// Arrowed writes such lines with an arrow.
func Arrowed(points []table.Row) []table.Row {
	all := slices.Clone(points)
	for i, r := range all {
		pad, far, _ := cut(r.Cells[0])
		all[i].Cells = []string{pad + " -> " + far}
	}
	return all
}
