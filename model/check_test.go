package model_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model"
)

// sound is a trunk to a breakout with a splice, two legs, a pair and a wire.
func sound() model.Harness {
	some := model.Some[string]
	return model.Harness{
		Terminations: []model.Termination{{ID: "P1"}, {ID: "A"}, {ID: "B"}},
		Breakouts:    []model.Breakout{{ID: "J1"}},
		Splices:      []model.Splice{{ID: "S1", At: "J1", Toward: some("LA")}},
		Wires: []model.Wire{
			{ID: "1", From: some("P1:1"), To: some("S1")},
			{ID: "2", From: some("P1:2"), To: some("A:1"), Return: some("3")},
			{ID: "3", From: some("P1:3"), To: some("A:2")},
		},
		Units: []model.Unit{{ID: "C1", Wires: []string{"2", "3"}, DrainFrom: some("shell"), DrainTo: some("cut")}},
		Branches: []model.Branch{
			{ID: "T1", From: "P1", To: "J1", Layers: []model.Layer{{Of: []string{"C1"}}, {Of: []string{"1"}}}},
			{ID: "LA", From: "J1", To: "A"},
			{ID: "LB", From: "B", To: "J1"},
		},
	}
}

func TestCheck(t *testing.T) {
	type place struct {
		Table    string
		Index    int
		ID       string
		Sub      string
		SubIndex int
		Key      string
	}
	for _, tt := range []struct {
		name string
		edit func(h *model.Harness)
		want []place
	}{
		{"sound", func(*model.Harness) {}, nil},
		{"nothing at all", func(h *model.Harness) { *h = model.Harness{} }, nil},
		{"empty id", func(h *model.Harness) { h.Wires = append(h.Wires, model.Wire{}) }, []place{{"wire", 3, "", "", 0, "id"}}},
		{"id twice", func(h *model.Harness) { h.Branches[2].ID = "LA" }, []place{{"branch", 2, "LA", "", 0, "id"}}},
		{"breakout like a termination", func(h *model.Harness) { h.Breakouts = append(h.Breakouts, model.Breakout{ID: "A"}) },
			[]place{{"breakout", 1, "A", "", 0, "id"}}},
		{"unit like a wire", func(h *model.Harness) { h.Units = append(h.Units, model.Unit{ID: "1"}) },
			[]place{{"unit", 1, "1", "", 0, "id"}}},
		{"colon in a termination", func(h *model.Harness) { h.Terminations = append(h.Terminations, model.Termination{ID: "X:1"}) },
			[]place{{"termination", 3, "X:1", "", 0, "id"}}},
		{"splice at a termination", func(h *model.Harness) { h.Splices[0].At = "P1" }, []place{{"splice", 0, "S1", "", 0, "at"}}},
		{"splice toward nothing", func(h *model.Harness) { h.Splices[0].Toward.V = "X" }, []place{{"splice", 0, "S1", "", 0, "toward"}}},
		{"wire from nowhere", func(h *model.Harness) { h.Wires[0].From.V = "X:1" }, []place{{"wire", 0, "1", "", 0, "from"}}},
		{"wire to a termination without cavity", func(h *model.Harness) { h.Wires[0].To.V = "A" }, []place{{"wire", 0, "1", "", 0, "to"}}},
		{"return that is not there", func(h *model.Harness) { h.Wires[1].Return.V = "X" }, []place{{"wire", 1, "2", "", 0, "return"}}},
		{"wire on two feeds", func(h *model.Harness) {
			h.Feeds = []model.Feed{{ID: "F1", Wires: []string{"1"}}, {ID: "F2", Wires: []string{"1"}}}
		}, []place{{"feed", 1, "F2", "", 0, "wires"}}},
		{"feed of nothing", func(h *model.Harness) { h.Feeds = []model.Feed{{ID: "F1", Wires: []string{"9"}}} },
			[]place{{"feed", 0, "F1", "", 0, "wires"}}},
		{"feed twice", func(h *model.Harness) { h.Feeds = []model.Feed{{ID: "F1"}, {ID: "F1"}} }, []place{{"feed", 1, "F1", "", 0, "id"}}},
		{"wire in two units", func(h *model.Harness) { h.Units = append(h.Units, model.Unit{ID: "C2", Wires: []string{"3"}}) },
			[]place{{"unit", 1, "C2", "", 0, "wires"}}},
		{"wire twice in a unit", func(h *model.Harness) { h.Units[0].Wires = []string{"2", "2"} },
			[]place{{"unit", 0, "C1", "", 0, "wires"}}},
		{"drain to nowhere", func(h *model.Harness) { h.Units[0].DrainTo.V = "X:1" }, []place{{"unit", 0, "C1", "", 0, "drain_to"}}},
		{"branch to nowhere", func(h *model.Harness) { h.Branches[1].To = "X" }, []place{{"branch", 1, "LA", "", 0, "to"}}},
		{"branch to itself", func(h *model.Harness) { h.Branches[1].To = "J1" }, []place{{"branch", 1, "LA", "", 0, "to"}}},
		{"loop", func(h *model.Harness) { h.Branches = append(h.Branches, model.Branch{ID: "L", From: "A", To: "B"}) },
			[]place{{"branch", 3, "L", "", 0, "to"}}},
		{"two branches side by side", func(h *model.Harness) {
			h.Branches = append(h.Branches, model.Branch{ID: "L", From: "J1", To: "P1"})
		},
			[]place{{"branch", 3, "L", "", 0, "to"}}},
		{"two trees", func(h *model.Harness) { h.Branches[0].From, h.Branches[0].To = "P1", "B"; h.Branches = h.Branches[:2] }, nil},
		{"in two layers", func(h *model.Harness) { h.Branches[0].Layers[1].Of = []string{"1", "C1"} },
			[]place{{"branch", 0, "T1", "layer", 1, "of"}}},
		{"twice in a layer", func(h *model.Harness) { h.Branches[0].Layers[1].Of = []string{"1", "1"} },
			[]place{{"branch", 0, "T1", "layer", 1, "of"}}},
		{"beside its unit", func(h *model.Harness) { h.Branches[0].Layers[1].Of = []string{"2"} },
			[]place{{"branch", 0, "T1", "layer", 1, "of"}}},
		{"without its unit", func(h *model.Harness) { h.Branches[1].Layers = []model.Layer{{Of: []string{"2", "3"}}} }, nil},
		{"member that is not there", func(h *model.Harness) { h.Branches[0].Layers[0].Of = []string{"S1"} },
			[]place{{"branch", 0, "T1", "layer", 0, "of"}}},
		{"pinned that is not there", func(h *model.Harness) { h.Branches[0].Layers[0].Pinned = []string{"X"} },
			[]place{{"branch", 0, "T1", "layer", 0, "pinned"}}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := sound()
			tt.edit(&h)
			var got []place
			for _, f := range h.Check() {
				got = append(got, place{f.Table, f.Index, f.ID, f.Sub, f.SubIndex, f.Key})
				if f.Says == "" || f.Allowed == "" {
					t.Errorf("%+v does not say what is wrong and what is allowed", f)
				}
			}
			if diff := cmp.Diff(tt.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
