package ends

import (
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// said is all that a sheet says, "LEVEL RULE WHERE: SENTENCE", in order.
func said(s *sheet.Sheet) []string {
	var out []string
	for _, g := range s.Snags {
		out = append(out, g.Level.String()+" "+g.Rule+" "+g.Where+": "+g.Says)
	}
	return out
}

func sameSaid(t *testing.T, name string, got, want []string) {
	t.Helper()
	for k := range max(len(got), len(want)) {
		switch {
		case k >= len(got):
			t.Errorf("%s: not said: %s", name, want[k])
		case k >= len(want):
			t.Errorf("%s: said too: %s", name, got[k])
		case got[k] != want[k]:
			t.Errorf("%s:\nsaid %s\nwant %s", name, got[k], want[k])
		}
	}
}

// ended is a sheet of one termination X with wires of cavities, "ID CAVITY" each, of 1.0 mm.
func ended(x model.Termination, wires ...string) *sheet.Sheet {
	x.ID = "X"
	h := &model.Harness{Terminations: []model.Termination{x}}
	s := &sheet.Sheet{H: h, Cat: &catalogue.Catalogue{Inserts: map[string]catalogue.Insert{"own": {ID: "own", Cavities: []string{"A", "B"},
		Contacts: []catalogue.InsertContacts{{Size: "20", Count: 2}}, NamesStanding: catalogue.Memory}},
		Contacts: map[string]catalogue.Contact{"20": {Size: "20"}}}, Limits: model.Rules{}.Resolve()}
	for _, w := range wires {
		id, cavity, _ := strings.Cut(w, " ")
		h.Wires = append(h.Wires, model.Wire{ID: id, Size: "22", From: model.Some("X:" + cavity)})
		s.Wires = append(s.Wires, sheet.Wire{Dia: sheet.Dia{Nominal: 1}})
	}
	s.Index = model.NewIndex(h)
	FillCavities(s)
	return s
}

// Everything that is said of the cavities of one end, by hand.
func TestAllThatIsSaidOfAnEnd(t *testing.T) {
	two, flange := []string{"1", "2"}, model.Some(model.MountFlange)
	twenty := map[string][]string{"20": two}
	yes, pin := model.Some(true), model.Some(model.GenderPin)
	const rest = "whether the wires fit them, what they may carry and which to buy is not judged"
	for _, c := range []struct {
		name  string
		x     model.Termination
		wires []string
		want  []string
	}{
		{"sound", model.Termination{Cavities: two, Contacts: twenty}, []string{"a 1", "b 2"}, nil},
		{"not tight", model.Termination{Cavities: two, Contacts: twenty, Tight: yes}, nil,
			[]string{"stop wall.tight X: It is in a wall that " +
				"must be tight: only a rated sealed pass-through may go through it, that is a sealed insert on a flange or with a " +
				"jam nut"}},
		{"sealed and loose", model.Termination{Cavities: two, Contacts: twenty, Tight: yes, SealMM: []unit.Millimetre{1, 2}}, nil,
			[]string{"stop wall.tight X: It is in a wall that must be tight: only a rated sealed pass-through may go through it, that " +
				"is a " +
				"sealed insert on a flange or with a jam nut"}},
		{"fixed and tight", model.Termination{Cavities: two, Contacts: twenty, Tight: yes, SealMM: []unit.Millimetre{1, 2},
			Mount: flange}, nil,
			[]string{"note wall.rated X: It is in a wall that must be tight: check in its maker's sheet that it is rated for what is " +
				"behind the wall"}},
		{"no such insert", model.Termination{Insert: model.Some("none")}, []string{"a 7"}, []string{
			`warn insert.part X: Insert "none" is in no catalogue: its cavities are taken as they are wired`}},
		{"names from memory", model.Termination{Insert: model.Some("own"), Gender: pin}, []string{"a A"}, []string{
			"note insert.names X: The cavity names of insert own are from memory: check them on the part, or list its cavities in the " +
				"file"}},
		{"no gender", model.Termination{Insert: model.Some("own"), Cavities: []string{"A", "B"}}, []string{"a A"}, []string{
			"note connector.unknown X: Its gender is not given: which contacts to buy, and whether another connector can be put in " +
				"its place, " +
				"is not judged"}},
		{"no such cavity", model.Termination{Cavities: two, Contacts: twenty}, []string{"a 9"}, []string{
			`stop cavity.none a: X has no cavity "9". The file lists 1, 2`}},
		{"no such cavity of an insert", model.Termination{Insert: model.Some("own"), Gender: pin}, []string{"a 9"}, []string{
			"note insert.names X: The cavity names of insert own are from memory: check them on the part, or list its cavities in the file",
			`stop cavity.none a: X has no cavity "9". Insert own has A, B. These names are from memory: where the part has others, list its ` +
				"cavities in the file"}},
		{"reserved elsewhere", model.Termination{Cavities: two, Contacts: twenty, Reserved: []string{"2", "7"}}, nil, []string{
			`stop cavity.none X: It reserves cavity "7", which it does not have. The file lists 1, 2`}},
		{"reserved and wired", model.Termination{Cavities: two, Contacts: twenty, Reserved: []string{"2"}}, []string{"a 2"}, []string{
			"warn cavity.reserved X: Cavity 2 is reserved but holds wire a"}},
		{"sized elsewhere", model.Termination{Cavities: two, Contacts: map[string][]string{"20": {"1", "8", "9", "2"}}}, nil, []string{
			"stop cavity.none X: It gives contact size 20 to 8, 9, which it does not have. The file lists 1, 2"}},
		{"other names", model.Termination{Cavities: two, Contacts: twenty, Aliases: map[string][]string{"1": {"a", "2"}, "2": {"a", "2"},
			"9": {"x"}}}, nil, []string{
			`stop cavity.alias X: It also calls cavity 1 "2", but has another cavity "2"`,
			`stop cavity.alias X: It calls two cavities "a": 1 and 2`,
			`stop cavity.alias X: It calls two cavities "2": 1 and 2`,
			`stop cavity.alias X: It gives another name to cavity "9", which it does not have. The file lists 1, 2`}},
		{"two under one seal", model.Termination{Cavities: two, Contacts: twenty, SealMM: []unit.Millimetre{1, 2}}, []string{"a 1", "b 1"},
			[]string{"stop cavity.twice X:1: It holds wires a and b; a sealed cavity takes one wire"}},
		{"outside the seal", model.Termination{Cavities: two, Contacts: twenty, SealMM: []unit.Millimetre{1.01, 2}}, []string{"a 1"},
			[]string{"stop cavity.seal X:1: Wire a of 1.00 mm does not seal: the seal takes 1.01 to 2.00 mm"}},
		{"at its seal", model.Termination{Cavities: two, Contacts: twenty, SealMM: []unit.Millimetre{0.5, 1}}, []string{"a 1"}, nil},
		{"unknown contacts", model.Termination{Cavities: two, Contacts: map[string][]string{"9": {"1"}, "8": {"2"}}}, []string{"a 1",
			"b 2"},
			[]string{"note contact.part X: Contacts of size 8 and 9 are in no catalogue: whether the wires fit them and what they may " +
				"carry is not judged"}},
		{"no sizes", model.Termination{Cavities: two}, []string{"a 1"},
			[]string{"note connector.unknown X: Its contact sizes and its seal are not given: " + rest}},
		{"no sizes, sealed", model.Termination{Cavities: two, SealMM: []unit.Millimetre{1, 2}}, []string{"a 1"},
			[]string{"note connector.unknown X: Its contact sizes are not given: " + rest}},
		{"one size", model.Termination{Cavities: two, Contacts: map[string][]string{"20": {"1"}}}, []string{"a 1", "b 2"},
			[]string{"note connector.unknown X: The contact sizes of 1 of its 2 wired cavities are not given: " + rest}},
		{"a flying lead", model.Termination{}, []string{"a 1", "b 2"}, nil},
		{"one cavity", model.Termination{Cavities: []string{"1"}}, []string{"a 1"}, nil},
	} {
		sameSaid(t, c.name, said(ended(c.x, c.wires...)), c.want)
	}
	// What stands in it, counted: used, spare, reserved and blank are all its cavities.
	s := ended(model.Termination{Cavities: []string{"1", "2", "3", "4", "5"}, Reserved: []string{"4"}, SealMM: []unit.Millimetre{1, 2},
		Firewall: yes}, "a 1", "b 2")
	s.H.Wires[1].Role = model.Some(model.RoleSpare)
	FillCavities(s)
	if x := s.Terms[0]; x.Used != 1 || x.Spare != 1 || x.Reserved != 1 || x.Blank != 2 || x.Contacts != 5 || x.SealPlugs != 3 ||
		x.Stubs != 3 ||
		strings.Join(x.Free, " ") != "3 5" || !x.Sealed {
		t.Errorf("%+v", x)
	}
	s.H.Terminations[0].SealMM, s.H.Terminations[0].Firewall = nil, model.Opt[bool]{}
	FillCavities(s)
	if x := s.Terms[0]; x.Contacts != 2 || x.SealPlugs != 0 || x.Stubs != 0 || x.Sealed {
		t.Errorf("%+v", x)
	}
}

// Where sleeves should not lie, by hand: a run of 1,000 mm from a boot of 30 mm at A to the breakout J; sleeves are 28 mm long, so two
// want 38 mm between their middles, and one 44 mm to clear the boot.
func TestAllThatIsSaidOfSplicePlaces(t *testing.T) {
	type at struct {
		at, toward string
		offset     unit.Millimetre
	}
	for _, c := range []struct {
		name  string
		flex  bool
		long  unit.Millimetre
		place []at
		want  []string
	}{
		{"clear", false, 1000, []at{{"J", "T", 400}, {"J", "", 0}}, nil},
		{"the wrong way", false, 1000, []at{{"J", "L", 40}}, []string{"warn splice.place S1: It lies toward L, which does not begin at J"}},
		{"too far", false, 300, []at{{"J", "T", 301}}, []string{"stop splice.place S1: It lies 301 mm along T, which is only 300 mm long"}},
		{"not measured", false, 0, []at{{"J", "T", 301}}, nil},
		{"flexes", true, 1000, []at{{"J", "T", 400}}, []string{"warn splice.flex S1: It lies in T, which flexes"}},
		{"in the boot", false, 1000, []at{{"A", "T", 43}}, []string{"warn splice.boot S1: It lies in the boot of A, 43 mm from its end"}},
		{"just clear of it", false, 1000, []at{{"A", "T", 44}}, []string{"note splice.end S1: It lies within 305 mm of a termination"}},
		{"at its end from the other side", false, 1000, []at{{"J", "T", 957}}, []string{
			"warn splice.boot S1: It lies in the boot of A, 43 mm from its end"}},
		{"near", false, 1000, []at{{"J", "T", 695}}, nil},
		{"a hair nearer", false, 1000, []at{{"J", "T", 696}}, []string{"note splice.end S1: It lies within 305 mm of a termination"}},
		{"stacked", false, 1000, []at{{"J", "T", 400}, {"J", "T", 437}, {"A", "T", 600}}, []string{
			"note splice.stack S2: It lies 37 mm from S1 on T: put them 38 mm apart, so that the bundle does not swell",
			"note splice.stack S3: It lies 0 mm from S1 on T: put them 38 mm apart, so that the bundle does not swell",
			"note splice.stack S3: It lies 37 mm from S2 on T: put them 38 mm apart, so that the bundle does not swell"}},
		{"apart", false, 1000, []at{{"J", "T", 400}, {"J", "T", 438}, {"J", "M", 400}}, nil},
		{"those behind one that is left out", false, 300, []at{{"J", "", 0}, {"J", "L", 40}, {"J", "T", 301}, {"J", "L", 50}}, []string{
			"warn splice.place S2: It lies toward L, which does not begin at J",
			"stop splice.place S3: It lies 301 mm along T, which is only 300 mm long",
			"warn splice.place S4: It lies toward L, which does not begin at J"}},
		{"those behind one on a run without a length", false, 0, []at{{"J", "T", 301}, {"J", "L", 40}}, []string{
			"warn splice.place S2: It lies toward L, which does not begin at J"}},
		{"stacked behind one elsewhere", false, 1000, []at{{"J", "M", 400}, {"J", "T", 400}, {"J", "T", 437}}, []string{
			"note splice.stack S3: It lies 37 mm from S2 on T: put them 38 mm apart, so that the bundle does not swell"}},
		{"at the very end", false, 300, []at{{"A", "T", 0}}, []string{"warn splice.boot S1: It lies in the boot of A, 0 mm from its end"}},
		{"at the breakout's end", false, 300, []at{{"A", "T", 300}},
			[]string{"note splice.end S1: It lies within 305 mm of a termination"}},
	} {
		h := &model.Harness{Terminations: []model.Termination{{ID: "A", Boot: model.Some("boot")}},
			Breakouts: []model.Breakout{{ID: "J"}, {ID: "K"},
				{ID: "N"}}, Branches: []model.Branch{{ID: "T", From: "A", To: "J", LengthMM: c.long}, {ID: "L", From: "K", To: "N",
				LengthMM: 900},
				{ID: "M", From: "J", To: "K", LengthMM: 900}}}
		if c.flex {
			h.Branches[0].Environment = []model.Surrounding{model.Flexing}
		}
		for k, p := range c.place {
			sp := model.Splice{ID: "S" + string(rune('1'+k)), At: p.at, OffsetMM: model.Some(p.offset)}
			if p.toward != "" {
				sp.Toward = model.Some(p.toward)
			}
			h.Splices = append(h.Splices, sp)
		}
		s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Splices: make([]sheet.Splice, len(h.Splices)),
			Cat: &catalogue.Catalogue{Boots: map[string]catalogue.Boot{"boot": {ID: "boot", LengthMM: 30}}}}
		staggered(s)
		sameSaid(t, c.name, said(s), c.want)
	}
}

// Where capped spares end, and what is said of them, by hand.
func TestAllThatIsSaidOfCaps(t *testing.T) {
	spare, mm := model.Some(model.RoleSpare), model.Some[unit.Millimetre]
	h := &model.Harness{Terminations: []model.Termination{{ID: "A"}}, Breakouts: []model.Breakout{{ID: "J"}},
		Branches: []model.Branch{{ID: "T", From: "A", To: "J", LengthMM: 300}, {ID: "L", From: "J", To: "A", LengthMM: 60}},
		Wires: []model.Wire{
			{ID: "1", From: model.Some("A:1"), CappedAt: model.Some("J"), Role: spare},
			{ID: "2", To: model.Some("A:2"), CappedAt: model.Some("J"), Role: spare, FoldMM: mm(40)},
			{ID: "3", From: model.Some("A:3"), CappedAt: model.Some("J"), Role: spare, FoldMM: mm(400)},
			{ID: "4", From: model.Some("A:4"), CappedAt: model.Some("J")},
			{ID: "5", From: model.Some("A:5"), To: model.Some("A:6"), CappedAt: model.Some("J"), Role: spare},
			{ID: "6", From: model.Some("A:7"), CappedAt: model.Some("A"), Role: spare},
			{ID: "7", From: model.Some("A:8"), CappedAt: model.Some("J"), Role: spare},
			{ID: "8", From: model.Some("A:9"), Role: spare},
		}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Wires: []sheet.Wire{{HasPath: true, Path: []int{0}}, {HasPath: true, Path: []int{1}},
		{HasPath: true, Path: []int{0}}, {HasPath: true, Path: []int{0}}, {HasPath: true, Path: []int{0}}, {HasPath: true}, {},
		{HasPath: true,
			Path: []int{0}}}}
	want := []Cap{{0, "J", 0, 200, 100}, {1, "J", 1, 40, 40}, {2, "J", 0, 0, 400}, {3, "J", 0, 200, 100}, {5, "A", -1, 0, 100}}
	got := Caps(s)
	for k := range max(len(got), len(want)) {
		if k >= len(got) || k >= len(want) || got[k] != want[k] {
			t.Fatalf("%+v\nwant %+v", got, want)
		}
	}
	Capped(s)
	sameSaid(t, "caps", said(s), []string{
		"warn wire.capped 4: It is capped at J but is no spare: its circuit ends there",
		"warn wire.capped 5: It has two ends and is also capped at J: one of the three is wrong",
		"warn wire.capped 6: It is capped at A, where it begins: it runs nowhere",
		"note wire.fold 3: It is folded back 400 mm along T, which is only 300 mm long",
	})
}
