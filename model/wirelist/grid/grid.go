package grid

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Apart gives the tables of a band whose cells are cavities of one connector, or name them, one row for each cell. Every row is at
// the line of its cell. Grid names the rows of headings that were taken apart.
func Apart(h shape.Headings, t *table.Table) (rows []table.Row, heads []int) {
	if h.HeadLine() > 0 || h.Numbered() {
		return nil, nil // a person has said where its columns are
	}
	for i := 0; i < len(t.Rows); i++ {
		made, n := figures(h, t.Rows[:i], t.Rows[i:])
		if made == nil {
			made, n = across(h, t.Rows[i:])
		}
		if made == nil {
			made, n = face(t.Rows[i:])
		}
		if made == nil {
			made, n = matrix(h, t.Rows[i:])
		}
		if made == nil {
			made, n = lines(h, t.Rows[i:])
		}
		if made == nil {
			made, n = poles(h, t.Rows[i:])
		}
		if made == nil {
			made, n = sidePoles(h, t.Rows[:i], t.Rows[i:])
		}
		if made == nil {
			made, n = terminals(t.Rows[i:])
		}
		if made == nil {
			if heads != nil {
				rows = append(rows, t.Rows[i])
			}
			continue
		}
		if heads == nil {
			rows = slices.Clone(t.Rows[:i])
		}
		heads = append(heads, t.Rows[i].Line)
		rows = append(rows, made...)
		i += n - 1
	}
	return rows, heads
}

// face takes apart the face of a connector, drawn as a grid: letters down and numbers across, or the other way round, and what is
// in the cavity in each cell: its name, colour and size.
//
//	J3 | 1           | 2           | 3
//	A  | inj blue 20 | gnd black   | -
//	B  | fan red 18  | lamp red 20 | horn
func face(rows []table.Row) (made []table.Row, n int) {
	head := rows[0]
	if len(rows) < 3 || len(head.Cells) < 3 {
		return nil, 0
	}
	of, across := head.Cells[0], head.Cells[1:]
	for len(across) > 0 && across[len(across)-1] == "" {
		across = across[:len(across)-1]
	}
	letters := len(across) > 1 && isLetterCell(across[0])
	if len(across) < 2 || !countsOn(across, letters) {
		return nil, 0
	}
	var down []string
	for _, r := range rows[1:] {
		if r.First || len(r.Cells) < 2 || !countsOn(append(slices.Clone(down), r.Cells[0]), !letters) || len(r.Cells) > len(across)+1 {
			break
		}
		down = append(down, r.Cells[0])
	}
	if len(down) < 2 {
		return nil, 0
	}
	pin := "Pin"
	if name.IsDesignator(of) {
		pin = of + " pin"
	}
	at := head
	at.Cells = []string{pin, "Signal", "Colour", "Size"}
	made = append(made, at)
	valued, filled := 0, 0
	for k, r := range rows[1 : len(down)+1] {
		for i := range across {
			if i+1 >= len(r.Cells) || r.Cells[i+1] == "" {
				continue
			}
			signal, colour, size := partFace(r.Cells[i+1])
			if filled++; colour != "" || size != "" {
				valued++
			}
			row := r
			row.Cells = []string{down[k] + across[i], signal, colour, size}
			if letters {
				row.Cells[0] = across[i] + down[k]
			}
			made = append(made, row)
		}
	}
	if 2*valued < filled && pin == "Pin" {
		return nil, 0 // figures
	}
	return made, len(down) + 1
}

// partFace parts what is in a cavity: a size behind, a colour before it, and the name in front.
func partFace(cell string) (signal, colour, size string) {
	all := strings.Fields(cell)
	if n := len(all); n > 1 {
		if g, ok := value.ParseGauge(all[n-1], value.BareAWG, value.MarkUnknown); ok && g.Size != "" &&
			(shape.IsMadeSize(all[n-1]) || strings.Trim(all[n-1], "0123456789") != "") {
			size, all = all[n-1], all[:n-1]
		}
	}
	for from := max(1, len(all)-2); from < len(all); from++ {
		if c := strings.Join(all[from:], " "); value.NamesColour(c) && len(c) > 2 {
			return strings.Join(all[:from], " "), c, size
		}
	}
	return strings.Join(all, " "), "", size
}

// isLetterCell reports whether a cell is one letter.
func isLetterCell(c string) bool {
	r := []rune(c)
	return len(r) == 1 && unicode.IsLetter(r[0])
}

// countsOn reports whether some cells count on from the first: 1 2 3, or letters that rise, of which some may be left out.
func countsOn(cells []string, letters bool) bool {
	for i, c := range cells {
		at := name.Ordinal(c)
		switch {
		case isLetterCell(c) != letters, at == 0 || len(c) > 2, i == 0 && at != 1:
			return false
		case i > 0 && (at <= name.Ordinal(cells[i-1]) || !letters && at != name.Ordinal(cells[i-1])+1):
			return false
		}
	}
	return true
}

// matrix takes apart a table that has a row for each device and a column for each of its cavities, headed by what the cavity is for
// and the cavity in brackets; its cells are the cavities of the connector that the title names.
//
//	Crane plug P1
//	Sensor | Supply (1) | Signal (2)
//	Boom   | 4          | 5
//	Hook   | 4          | 6
func matrix(h shape.Headings, rows []table.Row) (made []table.Row, n int) {
	head := rows[0]
	if len(head.Cells) < 3 || head.Cells[0] == "" || strings.HasSuffix(head.Cells[0], ")") {
		return nil, 0
	}
	of := map[int][2]string{}
	for i, c := range head.Cells[1:] {
		front, in, ok := strings.Cut(c, "(")
		in, closed := strings.CutSuffix(in, ")")
		switch h.Words[table.Fold(strings.TrimSpace(front))].Field {
		case name.FieldFrom, name.FieldTo, name.FieldRun:
			return nil, 0 // a row for a wire
		case name.FieldLength, name.FieldCurrent, name.FieldGauge, name.FieldFuse:
			continue // what its brackets hold is a unit: "Length (m)", "Strom (A)"
		}
		if front, in = strings.TrimSpace(front), strings.TrimSpace(in); ok && closed && front != "" && name.IsCavity(in) {
			of[i+1] = [2]string{front, in}
		}
	}
	if len(of) < 2 {
		return nil, 0
	}
	at := head
	at.Cells = []string{"Pin", "Signal", "To", "To pin"}
	for i, c := range head.Cells {
		if _, is := of[i]; !is && i > 0 && c != "" {
			at.Cells = append(at.Cells, c)
		}
	}
	made = append(made, at)
	for _, r := range rows[1:] {
		if r.First || shape.IsText(r) || len(r.Cells) == 0 || r.Cells[0] == "" || h.IsHead(r) {
			break
		}
		for i := range head.Cells {
			if p, is := of[i]; is && i < len(r.Cells) && !value.IsNothing(r.Cells[i]) {
				if !name.IsCavities(r.Cells[i]) {
					return nil, 0
				}
				row := r
				row.Cells = []string{r.Cells[i], p[0], r.Cells[0], p[1]}
				for k, c := range head.Cells {
					if _, is := of[k]; !is && k > 0 && c != "" {
						row.Cells = append(row.Cells, strings.Join(r.Cells[min(k, len(r.Cells)):min(k+1, len(r.Cells))], ""))
					}
				}
				made = append(made, row)
			}
		}
		n++
	}
	if n < 2 {
		return nil, 0
	}
	return made, n + 1
}
