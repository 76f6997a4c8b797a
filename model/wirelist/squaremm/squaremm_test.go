package squaremm

import (
	"slices"
	"testing"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Of each list the cells that stand below the heading "Size", or the lines of it.
func TestRows(t *testing.T) {
	for _, c := range []struct {
		name string
		head string
		rows []string
		want []string // nil where they stay as they are
	}{
		{"all usual", "Size", []string{"0.75mm", "1,0 mm"}, []string{"0.75mm²", "1,0 mm²"}},
		{"one alone", "Size", []string{"0.75mm"}, nil},
		{"a diameter beside many", "Size", []string{"0.5mm", "0.5mm", "0.5mm", "1mm", "1mm", "1mm", "2mm", "1.9mm"},
			[]string{"0.5mm²", "0.5mm²", "0.5mm²", "1mm²", "1mm²", "1mm²", "2mm²", "1.9mm"}},
		{"diameters", "Size", []string{"1.9mm", "2.0mm"}, nil},
		{"square ones", "Size", []string{"0.75mm2", "1 mm sq", "1.5mm²"}, nil},
		{"of the insulation", "Wire size OD", []string{"1.0mm", "2.0mm"}, nil},
		{"cores", "Size", []string{"2 x 0.75mm", "3x1.5mm"}, []string{"2 x 0.75mm²", "3x1.5mm²"}},
	} {
		h := shape.Headings{Words: words.Vocabulary()}
		tab := table.Table{Rows: []table.Row{{Line: 1, Cells: []string{"Pin", "Signal", c.head}}}}
		for i, cell := range c.rows {
			tab.Rows = append(tab.Rows, table.Row{Line: i + 2, Cells: []string{string(rune('1' + i)), "Lamp", cell}})
		}
		rows, taken := Rows(h, &tab)
		var got []string
		for _, r := range rows[1:] {
			got = append(got, r.Cells[2])
		}
		if want := c.want; want == nil && (!slices.Equal(got, c.rows) || taken != nil) || want != nil && !slices.Equal(got, want) {
			t.Errorf("%s: %q, %v", c.name, got, taken)
		}
		if tab.Rows[1].Cells[2] != c.rows[0] {
			t.Errorf("%s: the list itself is changed", c.name)
		}
	}
}

func TestTexts(t *testing.T) {
	for _, c := range []struct{ lines, want []string }{
		{[]string{"lamp to relay, 1.5mm red", "horn to relay, blue 0.75 mm, 300mm long"},
			[]string{"lamp to relay, 1.5mm² red", "horn to relay, blue 0.75 mm², 300mm long"}},
		{[]string{"lamp to relay, 1.5mm red", "horn to relay, 1.9mm blue"}, nil},
		{[]string{"lamp to relay, OD 1.5mm red", "horn to relay, OD 2.5mm blue"}, nil},
		{[]string{"drill 1.5mm hole", "and 2.5mm hole"}, nil},
	} {
		var tab table.Table
		for i, l := range c.lines {
			tab.Rows = append(tab.Rows, table.Row{Line: i + 1, Cells: []string{l}})
		}
		rows, _ := Rows(shape.Headings{Words: words.Vocabulary()}, &tab)
		want := c.want
		if want == nil {
			want = c.lines
		}
		for i, r := range rows {
			if r.Cells[0] != want[i] {
				t.Errorf("%q is %q", c.lines[i], r.Cells[0])
			}
		}
	}
}
