package customer

import (
	"testing"

	"contralay/calc/query/record"
	"contralay/model"
	"contralay/ui/paper/list"
)

// What was made again and what was taken back stands in one sentence, with how often and why; nothing where nothing was.
func TestDoneAgain(t *testing.T) {
	h := &model.Harness{Builds: []model.Build{{Serial: "1", Steps: []model.Ticked{{Key: "cut 1"}, {Key: "cut 2", Undone: model.Some("damaged")}}},
		{Serial: "2"}}}
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
