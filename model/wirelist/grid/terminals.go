package grid

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// terminals takes apart a table that has a row for each device and a column for each of its terminals, headed by the terminal
// alone; its cells say where the wires of them go. A heading that ends with some of the terminals is of their wires alone.
//
//	Relay | 30     | 85    | 86    | 87     | Gauge 85/86
//	R1    | Fuse 1 | Box 4 | Bus 1 | Pump 1 | 20
func terminals(rows []table.Row) (made []table.Row, n int) {
	const least = 3 // terminals: two numbers side by side may be anything (no source)
	head := rows[0]
	if len(rows) < 2 || len(head.Cells) <= least || !isTerminalDevice(head.Cells[0]) {
		return nil, 0
	}
	to := 1
	for to < len(head.Cells) && name.IsCavity(head.Cells[to]) && strings.ContainsAny(head.Cells[to], "0123456789") {
		to++
	}
	if to <= least {
		return nil, 0
	}
	at := head
	at.Cells = []string{"From", "From pin", "To"}
	only := make([][]string, len(head.Cells))
	for i := to; i < len(head.Cells); i++ {
		text := head.Cells[i]
		if front, last, ok := strings.Cut(text, " "); ok {
			of := strings.Split(last, "/")
			if !slices.ContainsFunc(of, func(p string) bool { return !slices.Contains(head.Cells[1:to], p) }) {
				text, only[i] = front, of
			}
		}
		at.Cells = append(at.Cells, text)
	}
	made = append(made, at)
	for _, r := range rows[1:] {
		if k, _ := r.Filled(); k < 2 || r.First || shape.IsText(r) || !name.IsDesignator(r.Cells[0]) || r.Line != rows[n].Line+1 {
			break
		}
		for i := 1; i < to && i < len(r.Cells); i++ {
			if value.IsNothing(r.Cells[i]) {
				continue
			}
			if strings.Trim(r.Cells[i], "0123456789.,") == "" {
				return nil, 0 // figures
			}
			row := r
			row.Cells = []string{r.Cells[0], head.Cells[i], r.Cells[i]}
			for k := to; k < len(head.Cells); k++ {
				cell := ""
				if k < len(r.Cells) && (only[k] == nil || slices.Contains(only[k], head.Cells[i])) {
					cell = r.Cells[k]
				}
				row.Cells = append(row.Cells, cell)
			}
			made = append(made, row)
		}
		n++
	}
	if n == 0 {
		return nil, 0
	}
	return made, n + 1
}

// isTerminalDevice reports whether a heading is one word for what has terminals of its own.
func isTerminalDevice(head string) bool {
	switch w := table.Fold(head); w {
	case "relay", "relays", "relais", "rele", "przekaznik", "switch", "connector", "plug":
		return true
	default:
		return name.IsDeviceWord(w)
	}
}
