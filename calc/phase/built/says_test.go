package built

import (
	"fmt"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/unit"
)

// What is otherwise in one step, in words, and what of it was built, by hand.
func TestWhatIsOtherwiseIsSaid(t *testing.T) {
	some, mm := model.Some[string], func(v float64) model.Opt[unit.Millimetre] { return model.Some(unit.Millimetre(v)) }
	members := func(ids ...string) model.What { return model.What{Members: ids} }
	for _, c := range []struct {
		f           Fact
		was         model.What
		all         []change
		says, built string
	}{
		{Fact{Kind: Make, At: "C1", What: members("1", "3")}, members("1", "2"), []change{{fieldMembers, "", ""}},
			"unit C1 has 3, had 2", "with 1 2"},
		{Fact{Kind: Lay, At: "T1 layer 1", What: members("1", "2", "3", "4")}, members("1", "2"), []change{{fieldMembers, "", ""},
			{fieldHand, "RH", "LH"}, {fieldOver, "9 mm", "8 mm"}}, "T1 layer 1 has 3, 4 too", "with 1 2"},
		{Fact{Kind: Join, At: "S1", What: members("1")}, members("1", "2", "3"), []change{{fieldMembers, "", ""}, {fieldPart, "stub-1",
			"stub-3"}},
			"splice S1 no longer has 2, 3 and is stub-1, was stub-3", "with 1 2 3, stub-3"},
		{Fact{Kind: Lay, At: "T1 centre"}, model.What{}, []change{{fieldHand, "RH", "LH"}, {fieldLay, "90 mm", "80 mm"}},
			"T1 centre hand is RH, was LH", "hand LH"},
		{Fact{Kind: Lay, At: "T1 centre"}, model.What{}, []change{{fieldLay, "90 mm", "80 mm"}, {fieldOver, "9.0 mm", "8.0 mm"}},
			"T1 centre lay is 90 mm, was 80 mm and OD is 9.0 mm, was 8.0 mm", "lay 80 mm, OD 8.0 mm"},
		{Fact{Kind: Put, At: "T1 sheath"}, model.What{}, []change{{fieldBranch, "500 mm", "400 mm"}},
			"T1 sheath is on 500 mm of branch, was on 400 mm", "for 400 mm of branch"},
		{Fact{Kind: Pin, At: "P1", What: model.What{Ends: []string{"1 a", "2 c", "4 d"}}}, model.What{Ends: []string{"1 a", "2 b", "3 c"}},
			[]change{{fieldEnds, "", ""}}, "P1 cavity 2 takes c, took b and cavity 4 takes d, took nothing and cavity 3 takes " +
				"nothing, took c",
			"2 b, 4 nothing, 3 c"},
		{Fact{Kind: Cut, At: "101", What: model.What{Spec: some("X"), Size: some("20"), Colour: some("4"), MM: mm(760)}},
			model.What{Spec: some("X"), Size: some("22"), Colour: some("1"), MM: mm(750)}, []change{{fieldSize, "", ""}},
			"wire 101 is 20 AWG yellow, was 22 AWG brown, 750 mm", "22 AWG brown, 750 mm"},
		{Fact{Kind: Cut, At: "101", What: model.What{Spec: some("X"), Size: some("22"), MM: mm(790)}},
			model.What{Spec: some("X"), Size: some("22"), MM: mm(750)}, []change{{fieldCut, "790 mm", "750 mm"}},
			"wire 101 is 790 mm, was 750 mm", "22 AWG, 750 mm"},
		{Fact{Kind: Cut, At: "101", What: model.What{Spec: some("Y"), Size: some("22"), MM: mm(790)}},
			model.What{Spec: some("X"), Size: some("22"), MM: mm(750)}, []change{{fieldSpec, "", ""}, {fieldFinished, "600 mm", "550 mm"}},
			"wire 101 is Y 22 AWG, 790 mm, was X 22 AWG, 750 mm", "X 22 AWG, 750 mm"},
		{Fact{Kind: Cut, At: "101", What: model.What{Size: some("22"), MM: mm(750)}}, model.What{Size: some("22"), MM: mm(750)},
			[]change{{fieldFinished, "600 mm", "550 mm"}}, "wire 101 is 750 mm, was 750 mm", "22 AWG, 750 mm"},
	} {
		says, built := says(c.f, c.was, c.all)
		if strings.TrimSpace(says) != c.says || built != c.built {
			t.Errorf("%q, built %q\nwant %q, built %q", says, built, c.says, c.built)
		}
	}
	for id, want := range map[string]string{"T1 2": "T1 layer 2", "T1 0": "T1 centre", "T1": "T1", "T 1 10": "T 1 layer 10"} {
		if got := layerOf(id); got != want {
			t.Errorf("%q is %q, want %q", id, got, want)
		}
	}
	for key, want := range map[string]string{"cut 101": "cut+101", "build up T1": "build up+T1", "weigh": "weigh+",
		"lay T1 0": "lay+T1 0"} {
		verb, id := Work(key)
		if verb+"+"+id != want {
			t.Errorf("%q is %s+%s", key, verb, id)
		}
	}
	if got := goneSays("cut", "9", model.What{Size: some("22"), Colour: some("3"), MM: mm(400)}); got !=
		"wire 9 is no longer in the sheet: 22 AWG orange, 400 mm was cut" {
		t.Error(got)
	}
	if got := goneSays("join", "S", members("1", "2")); got != "splice S is no longer in the sheet: it joined 1 2" {
		t.Error(got)
	}
	if got := partOf(Fact{Of: "T1", At: "T1 sheath X 9", What: model.What{Part: some("X 9")}}); got != "sheath of T1" {
		t.Error(got)
	}
	for _, c := range []struct {
		w    model.What
		want string
	}{{members("1", "2"), "[1 2]"}, {model.What{Ends: []string{"A 1+2", "B drain C1", "C 3"}}, "[1 2 C1 3]"}, {model.What{}, "[]"}} {
		if got := fmt.Sprint(pieces(c.w)); got != c.want {
			t.Errorf("%+v puts %s to use", c.w, got)
		}
	}
	if total(nil) != 0 || total([]unit.Millimetre{1, 2.5}) != 3.5 || millimetres(model.Opt[unit.Millimetre]{}, 2) != "none" ||
		millimetres(mm(1.234), 2) != "1.23 mm" {
		t.Error("sums and figures")
	}
}

// A deviation that is not there is not struck; nor is a step that is not on record kept.
func TestNothingToKeepOrStrike(t *testing.T) {
	b := &model.Build{Apart: []model.Deviation{{Steps: []string{"cut 9"}}}}
	Strike(b, 1)
	if len(b.Apart) != 1 {
		t.Error("one that is not there was struck")
	}
	Difference{At: "101", Built: "b", Says: "s", Steps: []string{"cut 101"}, keep: []kept{{key: "cut 101"}}}.Keep(b, "14", "")
	if len(b.Steps) != 0 || len(b.Apart) != 2 || b.Apart[1].Says != "b is kept: s" || b.Apart[1].By.V != "14" || b.Apart[1].On.Set ||
		b.Apart[1].At != "101" || fmt.Sprint(b.Apart[1].Steps) != "[cut 101]" {
		t.Errorf("%+v", b)
	}
	Strike(b, 0)
	if len(b.Apart) != 1 || b.Apart[0].Says != "b is kept: s" {
		t.Errorf("%+v", b.Apart)
	}
}
