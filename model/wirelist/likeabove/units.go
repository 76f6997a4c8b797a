package likeabove

import (
	"slices"
	"strings"

	"contralay/model/wirelist/point"
	"contralay/model/wirelist/saidonce"
	"contralay/model/wirelist/table"
)

// hasBare reports whether a piece behind a comma is a number alone and a colour, "25 red" or "red 25".
func hasBare(text string) bool { return withUnit(text) != text }

// withUnit writes mm² behind the number of such a piece.
func withUnit(text string) string {
	pieces := strings.Split(text, ", ")
	for i, p := range pieces {
		number, colour, ok := strings.Cut(strings.TrimSpace(p), " ")
		if at := strings.LastIndexByte(p, ' '); ok && number != "" && (number[0] < '0' || number[0] > '9') {
			number, colour = p[at+1:], strings.TrimSpace(p[:at]) // "red 25"
		}
		if i == 0 || !ok || number == "" || strings.Trim(number, "0123456789.,") != "" || number[0] > '9' || number[0] < '0' ||
			!point.IsColour(colour) {
			continue
		}
		pieces[i] = number + " mm² " + colour
		return strings.Join(pieces, ", ")
	}
	return text
}

// withUnits writes the unit of the sizes into the lines that give a bare number and a colour behind a comma, where a text says that they
// are in mm².
func withUnits(rows []table.Row) []Told {
	at := slices.IndexFunc(rows, func(r table.Row) bool { return len(r.Cells) == 1 && saidonce.SaysSquares(r.Cells[0]) })
	if at < 0 {
		return nil
	}
	took := false
	for i := range rows {
		r := &rows[i]
		if len(r.Cells) != 1 || r.Level > 0 || i == at {
			continue
		}
		if out := withUnit(r.Cells[0]); out != r.Cells[0] && runOf(out).ends {
			r.Cells, took = []string{out}, true
		}
	}
	if !took {
		return nil
	}
	return []Told{{Line: rows[at].Line, What: rows[at].Cells[0], Unit: true}}
}
