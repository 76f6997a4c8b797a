package squaremm

import (
	"strconv"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// texts writes mm² for the mm of the lines of a sheet that are no rows below headings, where each size stands right beside a colour and
// all of them are usual sections:
//
//	battery + > fuse 1, 2.5mm red
//	switch 2 > lamp 1, blue 0.75mm, 300mm long
func texts(h shape.Headings, rows []table.Row) (told Taken) {
	type place struct{ row, cell, end int }
	var all []place
	parts, headed := false, false
	for i, r := range rows {
		if headed = headed && !shape.IsText(r); headed || len(r.Cells) == 0 {
			continue
		}
		if headed = len(r.Cells) > 1 && h.IsHead(r); headed {
			continue
		}
		for k, cell := range r.Cells {
			for _, end := range ends(cell, nil) {
				number := sectionOf(cell[:end])
				if mm, err := strconv.ParseFloat(number, 64); err != nil || mm > thickest || !besideColour(cell, end) {
					continue
				}
				if !usual[number] {
					return Taken{}
				}
				all = append(all, place{i, k, end})
				parts = parts || strings.Contains(number, ".")
			}
		}
	}
	if len(all) < 2 || !parts {
		return Taken{}
	}
	last := -1
	for n := len(all) - 1; n >= 0; n-- { // the last of a cell first: what is before it stays where it is
		at := all[n]
		cells := append([]string(nil), rows[at.row].Cells...)
		cells[at.cell] = cells[at.cell][:at.end] + "²" + cells[at.cell][at.end:]
		if rows[at.row].Cells = cells; at.row != last {
			told.Rows = append([]table.Row{rows[at.row]}, told.Rows...)
		}
		last = at.row
	}
	first := all[0]
	told.Head = rows[first.row].Cells[first.cell]
	return told
}

// thickest is the largest size that is looked for in a text, in mm²: what is more is as likely a length (no source).
const thickest = 10

// besideColour reports whether a word for a colour stands right before a size or right behind it.
func besideColour(text string, end int) bool {
	before := strings.Fields(strings.TrimRight(strings.TrimRight(text[:end], "mM "), "0123456789.,"))
	if n := len(before); n > 0 && isHue(before[n-1]) {
		return true
	} else if n > 0 && ofRound(before[n-1]) {
		return false // "OD 2.5mm red"
	}
	behind := strings.Fields(strings.TrimLeft(text[end:], ",;/ "))
	return len(behind) > 0 && isHue(behind[0])
}

// isHue reports whether a word is a colour, or two with a stroke between them.
func isHue(w string) bool {
	first, _, _ := strings.Cut(strings.Trim(table.Fold(w), ".,;:()"), "/")
	return value.NamesColour(first)
}
