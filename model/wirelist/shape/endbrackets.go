package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// PartBrackets takes what stands in brackets behind the ends of a list for their cavities, where half of the ends have it, and one
// device with two different ones.
//
//	From            | To
//	Panel 1 (+)     | Regulator (PV+)
//	Regulator (B+)  | Main switch (1)
func (b *Block) PartBrackets() {
	if b.Has(name.FieldFromPin, name.FieldToPin) {
		return
	}
	filled, parted, several := 0, 0, false
	pins := map[string]string{}
	b.eachEnd(func(_ int, _ int, cell string) {
		filled++
		if device, pin := cavityInBrackets(cell); pin != "" {
			parted++
			several = several || pins[device] != "" && pins[device] != pin
			pins[device] = pin
		}
	})
	if !several || parted < 4 || 2*parted < filled {
		return
	}
	b.Rows = slices.Clone(b.Rows)
	b.eachEnd(func(k, i int, cell string) {
		if device, pin := cavityInBrackets(cell); pin != "" {
			b.Rows[k].Cells = slices.Clone(b.Rows[k].Cells)
			b.Rows[k].Cells[i] = device + ":" + pin
		}
	})
}

// eachEnd visits the ends of a block that are one cell.
func (b *Block) eachEnd(visit func(row, col int, cell string)) {
	for k, r := range b.Rows {
		if IsText(r) {
			continue
		}
		for i, c := range b.Cols {
			if (c.Field == name.FieldFrom || c.Field == name.FieldTo) && i < len(r.Cells) && r.Cells[i] != "" {
				visit(k, i, r.Cells[i])
			}
		}
	}
}

// cavityInBrackets parts "Regulator (PV+)"; pin is "" where the cell does not end in brackets with one short word that can be the
// name of a cavity.
func cavityInBrackets(cell string) (device, pin string) {
	const longest = 4 // "PV+", "OUT1"; no source
	open := strings.LastIndex(cell, " (")
	if open < 1 || !strings.HasSuffix(cell, ")") || strings.ContainsAny(cell[:open], ":;,()") {
		return "", ""
	}
	pin = strings.TrimSpace(cell[open+2 : len(cell)-1])
	if w := strings.Fields(pin); len(w) == 2 && (name.IsPinWord(table.Fold(w[0])) || table.Fold(w[0]) == "term") {
		pin = w[1] // "VHF (pin 1)"
	}
	if pin == "" || len(pin) > longest || strings.ContainsAny(pin, " :;,") || name.StateOf(pin) != name.Used && pin != "-" {
		return "", ""
	}
	return strings.TrimSpace(cell[:open]), pin
}
