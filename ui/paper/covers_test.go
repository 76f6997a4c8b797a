package paper

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/phase/threading"
	"contralay/calc/query/lists"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/ui/paper/figure"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/list"
)

// Every cover that a file lays has its row in the threading list, its steps in the run, its
// line in the bill, its place on the lay card and its place in the figures: each kind
// of cover, with a tube of the catalogue and without, beneath the sheath and over it.
func TestEveryCoverIsEverywhere(t *testing.T) {
	base := sheetFile(t, "example")
	i := base.Index.Branch["T1"]
	sheath := model.Cover{What: model.CoverSheath, Part: model.Some("AS23053/16 9.5")}
	for _, trait := range model.CoverTraits {
		for _, part := range []string{"", "a part of the shop's", "AS23053/16 12.7"} {
			for _, under := range []bool{true, false} {
				if under && trait.Kind == model.CoverSheath {
					continue // the first sheath of a branch is its sheath
				}
				t.Run(fmt.Sprintf("%s %q under %v", trait.Kind, part, under), func(t *testing.T) {
					c := model.Cover{What: trait.Kind}
					if part != "" {
						c.Part = model.Some(part)
					}
					covers := []model.Cover{sheath, c}
					if under {
						covers = []model.Cover{c, sheath}
					}
					s := laid(t, base.H.EditBranch(i, func(b *model.Branch) { b.Covers = covers }))
					_, isTube := s.Cat.Tube(part)
					want := trait.GoesOn
					if isTube {
						want = model.ShrunkOn
					}
					name := part
					if name == "" {
						name = "as stocked"
					}

					var steps []run.StepKind
					for _, r := range run.Run(s) {
						if r.Of == "T1" && string(r.Put.What) == string(trait.Kind) && r.Put.Part == name {
							steps = append(steps, r.Kind)
						}
					}
					wantSteps := map[model.GoesOn][]run.StepKind{model.WoundOn: {run.WindStep}, model.ThreadedOn: {run.ThreadStep},
						model.ShrunkOn: {run.ThreadStep, run.ShrinkStep}}[want]
					if !slices.Equal(steps, wantSteps) {
						t.Errorf("steps of the run %v, want %v", steps, wantSteps)
					}
					if !slices.ContainsFunc(threading.Threading(s), func(x threading.Threaded) bool {
						return x.Of == "T1" && string(x.What) == string(trait.Kind) && x.Part == name && x.GoesOn == want
					}) {
						t.Error("no row in the threading list")
					}
					if !slices.ContainsFunc(lists.Bill(s), func(r lists.BillRow) bool {
						return r.Group == string(trait.Kind) && r.Part == name && r.Need > 0
					}) {
						t.Error("no line in the bill")
					}
					if !slices.ContainsFunc(laycard.CardOf(list.MakerOf(s), i).Covers, func(c laycard.Cover) bool {
						return c.What == string(trait.Kind)
					}) {
						t.Error("it is not among the covers of its card")
					}

					b, err := figure.All(s)
					if err != nil {
						t.Fatal(err)
					}
					var got struct {
						Branches []struct {
							ID     string
							Covers []struct {
								What   string
								Part   *string
								GoesOn string `json:"goes_on"`
							}
						}
					}
					if err := json.Unmarshal(b, &got); err != nil {
						t.Fatal(err)
					}
					var order []string
					for _, b := range got.Branches {
						if b.ID != "T1" {
							continue
						}
						for _, c := range b.Covers {
							order = append(order, c.What+" "+c.GoesOn)
						}
					}
					wantOrder := []string{"sheath shrunk", string(trait.Kind) + " " + string(want)}
					if under {
						slices.Reverse(wantOrder)
					}
					if !slices.Equal(order, wantOrder) {
						t.Errorf("covers in the figures %v, want %v", order, wantOrder)
					}
				})
			}
		}
	}
}

// A sheath whose part is in no catalogue is a stop, and it is still threaded, shrunk, billed
// and printed: whoever builds all the same loses nothing.
func TestUnknownSheathIsEverywhere(t *testing.T) {
	base := sheetFile(t, "example")
	i := base.Index.Branch["T1"]
	s := laid(t, base.H.EditBranch(i, func(b *model.Branch) {
		b.Covers = []model.Cover{{What: model.CoverSheath, Part: model.Some("off the shelf")}}
	}))
	var steps []run.StepKind
	for _, r := range run.Run(s) {
		if r.Of == "T1" && r.Put.Part == "off the shelf" {
			steps = append(steps, r.Kind)
		}
	}
	if !slices.Equal(steps, []run.StepKind{run.ThreadStep, run.ShrinkStep}) {
		t.Errorf("steps of the run %v", steps)
	}
	if !slices.ContainsFunc(lists.Bill(s), func(r lists.BillRow) bool { return r.Part == "off the shelf" && r.Need > 0 }) {
		t.Error("no line in the bill")
	}
	if rows := laycard.CardOf(list.MakerOf(s), i).Covers; len(rows) != 1 || rows[0].Part != "off the shelf" {
		t.Errorf("covers of its card %v", rows)
	}
}

// What is wound or tied beneath the sheath is on before the sheath is shrunk; what lies over
// it goes on after that.
func TestCoversInOrder(t *testing.T) {
	base := sheetFile(t, "example")
	i := base.Index.Branch["T1"]
	cover := func(what model.CoverKind, part string) model.Cover {
		return model.Cover{What: what, Part: model.Some(part)}
	}
	s := laid(t, base.H.EditBranch(i, func(b *model.Branch) {
		b.Covers = []model.Cover{cover(model.CoverTape, "under"), cover(model.CoverBraid, "AS23053/16 12.7"),
			cover(model.CoverSheath, "AS23053/16 12.7"), cover(model.CoverTape, "outside")}
	}))
	var got []string
	for _, r := range run.Run(s) {
		if r.Of == "T1" && r.Put.What.IsCover() {
			got = append(got, strings.Fields(r.Key)[0]+" "+string(r.Put.What)+" "+r.Put.Part)
		}
	}
	want := []string{"wind tape under", "thread braid AS23053/16 12.7", "thread sheath AS23053/16 12.7",
		"shrink braid AS23053/16 12.7", "shrink sheath AS23053/16 12.7", "wind tape outside"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}
