package customer

import (
	"slices"
	"testing"

	"contralay/calc/query/record"
	"contralay/model"
	"contralay/ui/paper/list"
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
