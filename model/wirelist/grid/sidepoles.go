package grid

import (
	"slices"
	"strings"

	"contralay/model/wirelist/cable"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// poleColumn is a column of the cavities that one pole of each circuit has in a connector.
type poleColumn struct {
	at           int
	device, pole string
}

// sidePoles takes apart a table that has a row for each circuit and a column for each of its poles in a connector, which the headings
// name: one connector, and the row says what the circuit is taken to, or the same poles in two.
//
//	Channel | Sensor | SB1 + | SB1 - | J5 + | J5 -        Sensor | Tag | Supply on X3 | Ground on X3 | Colours
//	1       | Inlet  | 1     | 2     | 1    | 20          Fan    | B3  | 7            | 8            | red, black
//
// The wires of a row are made up together where two connectors have them and a text above says that they are twisted.
func sidePoles(h shape.Headings, above, rows []table.Row) (made []table.Row, n int) {
	head := rows[0]
	of := poleColumns(head)
	if len(of) < 2 {
		return nil, 0
	}
	for _, r := range rows[1:] {
		if r.First || shape.IsText(r) || len(r.Cells) <= of[0].at || h.IsHead(r) {
			break
		}
		n++
	}
	near, far := ofDevices(of)
	if n < 2 || near == nil || !areCavities(rows[1:n+1], of) {
		return nil, 0
	}
	cols, _ := h.Columns([]table.Row{head}, 0)
	k := circuit{name: -1, device: -1, colours: -1}
	k.find(cols, rows[1:n+1], of, len(near))
	if k.name < 0 || far == nil && k.device < 0 {
		return nil, 0
	}
	last := len(above)
	for last > 0 && shape.IsText(above[last-1]) {
		last--
	}
	above = above[last:]
	pairs := far != nil && slices.ContainsFunc(above, func(r table.Row) bool { return cable.Words(shape.RowText(r.Cells)).Twisted })
	at := head
	at.Cells = []string{"From", "Pin", "To", "Pin", "Signal"}
	if k.colours >= 0 {
		at.Cells = append(at.Cells, "Colour")
	}
	if pairs {
		at.Cells = append(at.Cells, "Twisted pair")
	}
	for _, i := range k.other {
		at.Cells = append(at.Cells, head.Cells[i])
	}
	made = append(made, at)
	for _, r := range rows[1 : n+1] {
		for p, c := range near {
			row := r
			called := cellOf(r, k.name)
			row.Cells = []string{c.device, cellOf(r, c.at)}
			if far != nil {
				row.Cells = append(row.Cells, far[p].device, cellOf(r, far[p].at))
			} else {
				row.Cells = append(row.Cells, cellOf(r, k.device), c.pole)
			}
			if name.StateOf(called) == name.Used {
				called += " " + c.pole
			}
			if row.Cells = append(row.Cells, called); k.colours >= 0 {
				row.Cells = append(row.Cells, pieceOf(cellOf(r, k.colours), p, len(near)))
			}
			if pairs {
				row.Cells = append(row.Cells, "pair "+cellOf(r, near[0].at))
			}
			for _, i := range k.other {
				row.Cells = append(row.Cells, cellOf(r, i))
			}
			if !value.IsNothing(row.Cells[1]) {
				made = append(made, row)
			}
		}
	}
	return made, n + 1
}

// poleColumns are the columns whose headings name a connector and a pole: "J5 +", "Ground on X3".
func poleColumns(head table.Row) (of []poleColumn) {
	for i, c := range head.Cells {
		if at := strings.LastIndexByte(c, ' '); at < 1 || !value.HasDigit(c) || len(c)-at > mostWord ||
			strings.Trim(c[at+1:], "0123456789") == "" || len(of) == 0 && i+2 > len(head.Cells) {
			continue // most cells of most rows: they are not parted
		}
		w := strings.Fields(c)
		if len(w) < 2 {
			continue
		}
		last := w[len(w)-1]
		if n := len(w); n > 2 && isOn(w[n-2]) && name.IsDesignator(last) {
			of = append(of, poleColumn{i, last, strings.Join(w[:n-2], " ")})
		} else if device := strings.Join(w[:n-1], " "); (isPole(last) || isSide(last)) && endsInNumber(device) {
			of = append(of, poleColumn{i, device, last})
		}
	}
	return of
}

// mostWord is how long the last word of such a heading is (no source).
const mostWord = 10

// isOn reports whether a word stands before the connector in which a pole has its cavity.
func isOn(w string) bool {
	return slices.Contains([]string{"on", "at", "in", "an", "auf", "sur", "en", "su", "op", "pa"}, table.Fold(w))
}

// isSide reports whether a word is one of the two wires of a pair.
func isSide(w string) bool {
	return slices.Contains([]string{"A", "B", "H", "L", "HI", "LO", "HIGH", "LOW", "P", "N"}, strings.ToUpper(w))
}

// endsInNumber reports whether a text is a designator, or a name that ends with one.
func endsInNumber(text string) bool {
	w := strings.Fields(text)
	return name.IsDesignator(w[len(w)-1]) && strings.ContainsAny(w[len(w)-1], "0123456789") && len(w) < 4
}

// ofDevices parts these columns by their connectors: one with two poles or more, or two that have the same poles. near is nil where they
// are anything else; the poles of far are in the order of near.
func ofDevices(of []poleColumn) (near, far []poleColumn) {
	for _, c := range of {
		if c.device == of[0].device {
			near = append(near, c)
		} else {
			far = append(far, c)
		}
	}
	if len(near) < 2 || len(near) > 4 {
		return nil, nil
	}
	if len(far) == 0 {
		return near, nil
	}
	var ordered []poleColumn
	for _, c := range near {
		k := slices.IndexFunc(far, func(f poleColumn) bool { return f.device == far[0].device && strings.EqualFold(f.pole, c.pole) })
		if k < 0 {
			return nil, nil
		}
		ordered = append(ordered, far[k])
	}
	if len(far) != len(near) {
		return nil, nil
	}
	return near, ordered
}

// areCavities reports whether the cells of these columns are cavities, none of them twice in one connector.
func areCavities(rows []table.Row, of []poleColumn) bool {
	seen := map[[2]string]bool{}
	for _, r := range rows {
		for _, c := range of {
			cell := cellOf(r, c.at)
			if value.IsNothing(cell) {
				continue
			}
			at := [2]string{c.device, cell}
			if !name.IsCavity(cell) || seen[at] {
				return false
			}
			seen[at] = true
		}
	}
	return len(seen) > len(of)
}

// circuit is the columns that say of a row what its circuit is called, what it is taken to, and the colours of its wires in the order of
// the poles; other are those beside.
type circuit struct {
	name, device, colours int
	other                 []int
}

// find looks for them; poles is how many wires a row has.
func (k *circuit) find(cols []shape.Column, rows []table.Row, of []poleColumn, poles int) {
	for i, c := range cols {
		if c.Head == "" || slices.ContainsFunc(of, func(p poleColumn) bool { return p.at == i }) {
			continue
		}
		lettered, designators, coloured := 0, 0, 0
		for _, r := range rows {
			cell := cellOf(r, i)
			if name.IsDesignator(cell) && strings.ContainsAny(cell, "0123456789") {
				designators++
			} else if strings.Trim(cell, "0123456789 ") != "" {
				lettered++
			}
			if value.NamesColour(pieceOf(cell, 0, poles)) {
				coloured++
			}
		}
		switch {
		case k.colours < 0 && coloured == len(rows):
			k.colours = i
		case k.device < 0 && designators == len(rows):
			k.device = i
		case k.name < 0 && lettered == len(rows) && c.Field != name.FieldNote:
			k.name = i
		default:
			k.other = append(k.other, i)
		}
	}
	if k.device < 0 {
		k.device = k.name
	}
	if k.name < 0 {
		k.name = k.device
	}
}

// pieceOf is one of as many pieces of a cell as its row has wires, "red, black, white"; "" where it has another number.
func pieceOf(cell string, at, pieces int) string {
	for _, mark := range []string{",", ";", "/", " "} {
		if all := strings.Split(cell, mark); len(all) == pieces {
			return strings.TrimSpace(all[at])
		}
	}
	return ""
}
