package customer

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc/query/record"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
)

// What was made again and what was taken back stands in one sentence, with how often and why; nothing where nothing was.
func TestDoneAgain(t *testing.T) {
	h := &model.Harness{Builds: []model.Build{{Serial: "1", Steps: []model.Ticked{{Key: "cut 1"},
		{Key: "cut 2", Undone: model.Some("damaged")}}}, {Serial: "2"}}}
	again := func(serial string, made ...model.Again) string {
		return Set{Maker: list.Maker{H: h}, Record: &record.Record{Serial: serial, Again: made}}.again()
	}
	for _, c := range []struct{ got, want string }{
		{again("2"), ""},
		{again("1"), "Done again: step cut 2 undone: damaged."},
		{again("2", model.Again{End: "P1:1", Times: 1}), "Done again: contact P1:1 made again, 1 time."},
		{again("1", model.Again{End: "P1:1", Times: 2}), "Done again: contact P1:1 made again, 2 times; step cut 2 undone: damaged."},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}

// Rows that say the same of several things are one, with the things by commas in the order they are met.
func TestAlikeRows(t *testing.T) {
	g := alike(nil, [][]string{{"P1", "5", "a"}, {"P2", "6", "a"}, {"P3", "5", "a"}, {"P4", "5", "b"}})
	var got []string
	for _, l := range g.Lines {
		got = append(got, l.Cells[0].Text+": "+l.Cells[1].Text+l.Cells[2].Text)
	}
	if want := []string{"P1, P3: 5a", "P2: 6a", "P4: 5b"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// Columns get the width that their words need, but the broken one; where that would leave it too little, none is given.
func TestBreaksLeaveRoom(t *testing.T) {
	grid := func() page.Grid {
		return page.Grid{Cols: []page.Col{{Head: "end"}, {Head: "says"}}, Lines: []page.Line{page.Cells("P1", "a long tale of a wire")}}
	}
	g := grid()
	if breaks(&g, 10, 1); g.Cols[0].Wide <= 0 || g.Cols[1].Wide != 0 {
		t.Errorf("with room: %v and %v", g.Cols[0].Wide, g.Cols[1].Wide)
	}
	g = grid()
	if breaks(&g, page.Wide, 1); g.Cols[0].Wide != 0 || g.Cols[1].Wide != 0 {
		t.Errorf("without room: %v and %v", g.Cols[0].Wide, g.Cols[1].Wide)
	}
}

// What a layer may be by its wires stands from the least to the most; nothing where it is not known.
func TestBandOfALayer(t *testing.T) {
	c := Set{Maker: list.Maker{H: &model.Harness{}, Sys: unit.MM}, Record: &record.Record{Layers: []record.Layer{
		{Branch: "T1", Layer: 1, SheetMM: 5.4, LeastMM: 5.2, MostMM: 5.6}, {Branch: "T1", Layer: 2, SheetMM: 7.5}}}}
	text := ""
	for _, b := range c.layers() {
		text += string(b.HTML)
		if b.Cut != nil {
			for _, r := range b.Cut.Rows {
				text += string(r.HTML)
			}
		}
	}
	if want := c.diameter(5.2) + "–" + c.diameter(5.6); strings.Count(text, want) != 1 || strings.Count(text, "–") != 1 {
		t.Errorf("%q is not there once:\n%s", want, text)
	}
}
