package together

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// aside takes out of the places what is none beside two whole ends: the outputs of a unit whose cavities stand in a column of their own,
// and the devices that the wires are named after.
//
//	Output | PDM pin | Device    | Destination | Dest pin
//	OUT1   | A1      | fuel pump | FP1         | 1
func (t *Table) aside(all []place) []place {
	headed := slices.IndexFunc(all, func(p place) bool { return p.of != "" && p.pins >= 0 })
	whole := slices.IndexFunc(all, func(p place) bool { return p.device >= 0 && p.pins >= 0 })
	if len(all) < 3 || headed < 0 || whole < 0 {
		return all
	}
	cols, outputs := slices.Clone(t.Cols), none
	rest := slices.DeleteFunc(slices.Clone(all), func(p place) bool {
		switch {
		case p.device == none && p.of == "" && t.headsOutputs(p.pins):
			cols[p.pins].Field, outputs = name.FieldKeep, p.pins
			return true
		case p.pins == none && p.side == "" && !t.heads(name.FieldSignal):
			cols[p.device].Field = name.FieldSignal
			return true
		}
		return false
	})
	if len(rest) != 2 {
		return all
	}
	t.Cols, t.outputs = cols, outputs
	return rest
}

// headsOutputs reports whether a column is headed by one word for the outputs of a unit.
func (t *Table) headsOutputs(i int) bool {
	switch strings.Join(name.Words(table.Fold(t.Cols[i].Head)), " ") {
	case "output", "output no", "channel", "ch", "ausgang", "kanal", "sortie", "salida", "uscita", "uitgang", "utgang", "wyjscie", "saida",
		"canale", "kanaal":
		return true
	}
	return false
}
