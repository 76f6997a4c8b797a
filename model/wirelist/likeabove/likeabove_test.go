package likeabove_test

import (
	"slices"
	"testing"

	"contralay/model/wirelist/likeabove"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

func written(t *testing.T, lines ...string) (out []string, told int) {
	t.Helper()
	tab := table.Table{File: "x.txt"}
	for i, l := range lines {
		tab.Rows = append(tab.Rows, table.Row{Line: i + 1, Cells: []string{l}})
	}
	rows, of := likeabove.Rows(shape.Headings{Words: words.Vocabulary()}, &tab)
	for _, r := range rows {
		out = append(out, r.Cells[0])
	}
	return out, len(of)
}

// What a line leaves short is written out, and told; all else stays as it is.
func TestRows(t *testing.T) {
	for _, l := range []struct {
		name  string
		lines []string
		want  []string // nil: as they are
		told  int
	}{
		{"same size", []string{"Box pin 1 -> Lamp pin 1, red, 2.5 mm2", "Box pin 2 -> Lamp pin 2, blue, same size"},
			[]string{"Box pin 1 -> Lamp pin 1, red, 2.5 mm2", "Box pin 2 -> Lamp pin 2, blue, 2.5 mm2"}, 1},
		{"in brackets", []string{"Box pin 1 -> Lamp pin 1, rot, 2,5 mm²", "Box pin 2 -> Lamp pin 2, blau (gleicher Querschnitt)"},
			[]string{"Box pin 1 -> Lamp pin 1, rot, 2,5 mm²", "Box pin 2 -> Lamp pin 2, blau (2,5 mm²)"}, 1},
		{"ditto without a size above", []string{"Box pin 1 -> Lamp pin 1, red", "Box pin 2 -> Lamp pin 2, ditto"}, nil, 0},
		{"same of something else", []string{"Box pin 1 -> Lamp pin 1, red, 2.5 mm2", "Box pin 2 -> Lamp pin 2, blue, same plug"}, nil, 0},
		{"a gap between", []string{"Box pin 1 -> Lamp pin 1, red, 2.5 mm2", "These go forward, all of them.",
			"Box pin 2 -> Lamp pin 2, blue, same size"}, nil, 0},
		{"no unit said", []string{"Box 1 -> Relay, 6 red", "Box 2 -> Lamp, 4 red"}, nil, 0},
		{"unit said", []string{"Sizes in mm²", "Box 1 -> Pump, 6 red", "Box 2 -> Lamp, red 25"},
			[]string{"Sizes in mm²", "Box 1 -> Pump, 6 mm² red", "Box 2 -> Lamp, 25 mm² red"}, 1},
		{"free", []string{"Box 1 -> Pump, 6 mm2, red", "Box 2 -> Lamp, 6 mm2, red", "Box 3 free"},
			[]string{"Box 1 -> Pump, 6 mm2, red", "Box 2 -> Lamp, 6 mm2, red", "Box 3 -> free"}, 1},
		{"free, of no device above", []string{"Box 1 -> Pump, 6 mm2, red", "Box 2 -> Lamp, 6 mm2, red", "Bay 3 free"}, nil, 0},
		{"free, and wired", []string{"Box 1 -> Pump, 6 mm2, red", "Box 2 -> Lamp, 6 mm2, red", "Box 2 free"}, nil, 0},
	} {
		got, told := written(t, l.lines...)
		if l.want == nil {
			l.want = l.lines
		}
		if !slices.Equal(got, l.want) || told != l.told {
			t.Errorf("%s: %q, told %d", l.name, got, told)
		}
	}
}
