package grid

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// lines takes apart a table that has a row for each node of a bus and a column for each of its lines, headed by what the line is
// called; its cells are the cavities that the lines have in the plug of the node.
//
//	Node      | CAN H | CAN L | +24 V | GND
//	Bow light | 1     | 2     | 3     | 4
//	Rudder    | A     | B     | C     | D
func lines(h shape.Headings, rows []table.Row) (made []table.Row, n int) {
	head := rows[0]
	if len(head.Cells) < 3 || head.Cells[0] == "" || !headsNodes(head.Cells[0]) {
		return nil, 0
	}
	var of, beside []int
	for i, c := range head.Cells[1:] {
		switch {
		case isLine(c):
			of = append(of, i+1)
		case c != "":
			beside = append(beside, i+1)
		}
	}
	if len(of) < 2 || 2*len(of) < len(of)+len(beside) {
		return nil, 0
	}
	at := head
	at.Cells = nodeHeads()
	for _, i := range beside {
		at.Cells = append(at.Cells, head.Cells[i])
	}
	made = append(made, at)
	nodes := map[string]bool{}
	for _, r := range rows[1:] {
		if r.First || shape.IsText(r) || cellAt(r, 0) == "" || h.IsHead(r) {
			break
		}
		pins := map[string]bool{}
		for _, i := range of {
			cell := cellAt(r, i)
			if value.IsNothing(cell) {
				continue
			}
			if !name.IsCavity(cell) || pins[cell] {
				return nil, 0 // figures
			}
			pins[cell] = true
			row := r
			row.Cells = []string{r.Cells[0], cell, head.Cells[i]}
			for _, k := range beside {
				row.Cells = append(row.Cells, cellAt(r, k))
			}
			made = append(made, row)
		}
		nodes[table.Fold(r.Cells[0])] = true
		n++
	}
	if n < 2 || len(nodes) < n || len(made) < 2*n {
		return nil, 0
	}
	return made, n + 1
}

// nodeHeads are the headings of such a table once it is taken apart.
func nodeHeads() []string { return []string{"Connector", "Pin", "Signal"} }

// OfNodes reports whether some rows of headings are those.
func OfNodes(head []table.Row) bool {
	return len(head) == 1 && len(head[0].Cells) > 2 && slices.Equal(head[0].Cells[:3], nodeHeads())
}

// cellAt is a cell of a row; "" where the row is shorter.
func cellAt(r table.Row, i int) string {
	if i < len(r.Cells) {
		return r.Cells[i]
	}
	return ""
}

// headsNodes reports whether a heading is of devices that hang on a bus, one a row. From memory, no source.
func headsNodes(head string) bool {
	if !value.IsLetter(head[0]) || strings.ContainsAny(head, "0123456789:") {
		return false // as most cells of most rows
	}
	w := name.Words(table.Fold(head))
	return len(w) > 0 && len(w) < 4 && slices.ContainsFunc(w, func(w string) bool {
		switch w = strings.TrimSuffix(w, "s"); w {
		case "node", "station", "unit", "box", "plug", "connector", "board", "ecu", "knoten", "teilnehmer", "stecker", "noeud",
			"nodo", "nod", "solmu", "uzel", "wezel", "knooppunt", "laite", "enhet", "connecteur", "connettore", "conector", "apparaat":
			return true
		}
		return name.IsDeviceWord(w) || name.IsDeviceWord(w+"s")
	})
}

// isLine reports whether a heading is the name of a line that runs from node to node: one of a bus, a supply, a ground.
func isLine(head string) bool {
	f := table.Fold(head)
	w := name.Words(f)
	if len(w) == 0 || len(w) > 4 || strings.ContainsAny(f, "([") {
		return false
	}
	for k, x := range w {
		switch x {
		case "gnd", "ground", "earth", "masse", "massa", "masa", "tierra", "maa", "jord", "0v", "vcc", "vbat", "vdd", "shield", "screen",
			"drain", "schirm", "can", "canh", "canl", "lin", "tx", "rx", "rs485", "sda", "scl", "mosi", "miso", "sclk", "wake", "term",
			"lo", "hi", "data", "clk", "clock", "sync", "supply", "feed", "ignition", "plus", "minus", "versorgung", "alimentation":
			return true
		case "v", "vdc":
			if k > 0 && strings.Trim(w[k-1], "0123456789") == "" {
				return strings.ContainsAny(head, "+-") || k == 1
			}
		}
		if volts := strings.TrimSuffix(x, "v"); volts != x && volts != "" && strings.Trim(volts, "0123456789") == "" {
			return true
		}
	}
	return false
}
