package squaremm

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// headed is a sheet whose heading of a column is written anew.
type headed struct {
	rows []table.Row
	of   Taken
}

// wiresInMM writes mm² in the heading of a column that is a word for a wire and mm, where the numbers below are usual sections, some with
// decimals, and none is more than wire of a harness has: no wire is 1.5 mm long. rows is nil where there is no such column.
//
//	Pin | Signal | Wire mm
//	1   | Lamp   | 1.0
//	2   | Pump   | 2.5
func wiresInMM(h shape.Headings, rows []table.Row) (out headed) {
	const most = 16.0 // mm² (no source)
	at := slices.IndexFunc(rows, func(r table.Row) bool { return slices.ContainsFunc(r.Cells, headsWireMM) })
	if at < 0 || !h.IsHead(rows[at]) {
		return out
	}
	k := slices.IndexFunc(rows[at].Cells, headsWireMM)
	if cols, _ := h.Columns(rows[at:at+1], len(rows[at].Cells)); k >= len(cols) || cols[k].Given || cols[k].Field != name.FieldLength {
		return out
	}
	parts := false
	for _, r := range rows[at+1:] {
		if k >= len(r.Cells) || r.Cells[k] == "" || shape.IsText(r) {
			continue
		}
		number := sectionOf(r.Cells[k])
		mm, err := strconv.ParseFloat(number, 64)
		if strings.Trim(r.Cells[k], "0123456789.,") != "" || err != nil || mm > most || !usual[number] {
			return out
		}
		parts = parts || strings.Contains(number, ".")
		out.of.Rows = append(out.of.Rows, r)
	}
	if len(out.of.Rows) < 2 || !parts {
		return headed{}
	}
	out.of.Head = rows[at].Cells[k]
	out.rows = slices.Clone(rows)
	out.rows[at].Cells = slices.Clone(rows[at].Cells)
	end := cutUnit(out.of.Head) + len("mm")
	out.rows[at].Cells[k] = out.of.Head[:end] + "²" + out.of.Head[end:]
	return out
}

// headsWireMM reports whether a heading is a word for a wire and mm, in brackets or not, and nothing else.
func headsWireMM(head string) bool {
	end := cutUnit(head)
	if end <= 0 {
		return false // most cells
	}
	switch table.Fold(strings.TrimRight(head[:end], " ([,")) {
	case "wire", "cable", "core", "conductor", "leitung", "ader", "kabel", "draht", "fil", "cavo", "filo", "hilo", "draad", "ledning",
		"kabl", "przewod":
		return true
	}
	return false
}

// cutUnit is where the mm at the end of a heading begins; −1 where it has none.
func cutUnit(head string) int {
	bare := strings.TrimRight(head, " )].")
	if len(bare) < 4 || len(bare) > 20 || !strings.EqualFold(bare[len(bare)-2:], "mm") || isLetter(bare[len(bare)-3]) {
		return -1
	}
	return len(bare) - 2
}
