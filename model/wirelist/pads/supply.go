package pads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// IsSupply reports whether a cell is what boards call the pads of their supply and ground (common practice, no source).
func IsSupply(cell string) bool {
	f := table.Fold(strings.TrimSpace(name.WithoutBrackets(cell)))
	return slices.Contains([]string{"gnd", "ground", "vcc", "vdd", "vss", "vin", "3v3", "3.3v", "5v", "+5v", "12v", "24v", "0v", "vbat",
		"vbus", "v+", "v-", "masse", "agnd", "dgnd", "com"}, f)
}

// IsBus reports whether a cell is what boards call a pad of a bus that is in common use, or the reset beside it (common practice, no
// source).
func IsBus(cell string) bool {
	f := table.Fold(strings.TrimSpace(name.WithoutBrackets(cell)))
	return slices.Contains([]string{"sda", "scl", "sck", "sclk", "clk", "mosi", "miso", "cs", "csn", "ss", "din", "dout", "rx", "tx", "rxd",
		"txd", "rst", "reset", "irq", "d/c", "dc", "sdi", "sdo", "swdio", "swclk", "trig", "echo"}, f)
}

// isPole reports whether a cell is a letter or a few and a pole, as the pads of pairs are called: "E+", "CAN-", "A−".
func isPole(cell string) bool {
	f := table.Fold(strings.TrimSpace(cell))
	bare := strings.TrimRight(f, "+-")
	return bare != "" && len(f) == len(bare)+1 && len(f) <= 5 && !strings.ContainsAny(bare, " +-/.,")
}

// isThere reports whether a cell says something; the one dash can be the pole of a supply.
func isThere(cell string) bool {
	return !value.IsNothing(cell) || table.Fold(strings.TrimSpace(cell)) == "-"
}

// isRail reports whether a cell is a pad of the supply, or a pole of it alone.
func isRail(cell string) bool {
	f := table.Fold(strings.TrimSpace(cell))
	return IsSupply(cell) || f == "+" || f == "-"
}

// OfTwo reports whether the cells of two columns are the pads of two devices, row by row: short names, hardly one of them twice, and
// a ground, a supply, a bus or the poles of a pair beside a pad in some row.
func OfTwo(rows []table.Row, a, b int) bool {
	n, known, both := 0, 0, 0
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if max(a, b) >= len(r.Cells) || shape.IsText(r) || !isThere(r.Cells[a]) || !isThere(r.Cells[b]) {
			continue
		}
		n++
		x, y := isRail(r.Cells[a]), isRail(r.Cells[b])
		if x || y || IsBus(r.Cells[a]) || IsBus(r.Cells[b]) || isPole(r.Cells[a]) && isPole(r.Cells[b]) {
			known++
		}
		if x && y {
			both++
		}
	}
	return n > 2 && (both > 0 || 2*known >= n) && AreNames(rows, a) && AreNames(rows, b)
}
