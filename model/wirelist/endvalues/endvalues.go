package endvalues

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Part gives the sizes and colours that stand behind a comma at the end of far ends columns of their own; taken are the rows that have one.
//
//	Pin | Colour | Goes to
//	3   | white  | Earth stud, 2,5 mm²
//	4   | green  | Lamp
//	5   |        | Relay K2 terminal 87, red, 2,5 mm²
func Part(b *shape.Block) (taken []table.Row) {
	at := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldTo })
	if at < 0 {
		return nil
	}
	size := columnOf(b, name.FieldGauge)
	colour := columnOf(b, name.FieldColour)
	wide := len(b.Cols)
	rows := b.Rows
	for k, r := range b.Rows {
		if at >= len(r.Cells) || strings.IndexByte(r.Cells[at], ',') < 0 {
			continue
		}
		end, of, hue := cut(r.Cells[at], b.Mark)
		if of == "" || b.Cell(r.Cells, name.FieldGauge) != "" || hue != "" && b.Cell(r.Cells, name.FieldColour) != "" {
			continue
		}
		if len(taken) == 0 {
			rows = slices.Clone(b.Rows)
		}
		taken = append(taken, r)
		if size < 0 {
			size, wide = wide, wide+1
		}
		if hue != "" && colour < 0 {
			colour, wide = wide, wide+1
		}
		cells := make([]string, max(wide, len(r.Cells)))
		copy(cells, r.Cells)
		cells[at], cells[size] = end, of
		if hue != "" {
			cells[colour] = hue
		}
		rows[k].Cells = cells
	}
	if len(taken) == 0 {
		return nil
	}
	b.Rows = rows
	b.Cols = slices.Clone(b.Cols)
	head := b.Cols[at].Head
	for len(b.Cols) < wide {
		f := name.FieldGauge
		if len(b.Cols) == colour {
			f = name.FieldColour
		}
		b.Cols = append(b.Cols, shape.Column{Field: f, Head: head})
	}
	return taken
}

// columnOf is the first column of a field, −1 where there is none.
func columnOf(b *shape.Block, f name.Field) int {
	return slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == f })
}

// cut parts a size with its unit, and a colour beside it, off an end that they stand behind; size is "" where there is none.
func cut(text string, mark value.Mark) (end, size, colour string) {
	all := strings.Split(text, ", ")
	n := len(all)
	for n > 1 && len(all)-n < 2 {
		p := strings.TrimSpace(all[n-1])
		if size == "" && isSize(p, mark) {
			size = p
		} else if colour == "" && len(p) > 2 && value.NamesColour(p) {
			colour = p
		} else {
			break
		}
		n--
	}
	if size == "" || strings.TrimSpace(all[n-1]) == "" {
		return text, "", ""
	}
	return strings.TrimSpace(strings.Join(all[:n], ", ")), size, colour
}

// isSize reports whether a text is a size with its unit and nothing else.
func isSize(text string, mark value.Mark) bool {
	if text == "" || !value.HasDigit(text) || strings.Trim(text, "0123456789.,") == "" {
		return false
	}
	g, ok := value.ParseGauge(text, value.BareAWG, mark)
	return ok && g.Size != "" && g.Spec == "" && !g.IsCable()
}
