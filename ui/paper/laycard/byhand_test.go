package laycard_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/laycard/joint"
	"contralay/ui/paper/list"
)

// load is a harness with every branch laid, or proposed.
func load(t testing.TB, name string) list.Maker {
	t.Helper()
	if m, ok := loaded[name]; ok {
		return m
	}
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	loaded[name] = list.MakerOf(calc.Complete(&d.Harness, cat, nil))
	return loaded[name]
}

// loaded are the harnesses of files, worked out once for all tests.
var loaded = map[string]list.Maker{}

// hand is the small loom whose lists are worked out by hand in byhand.txt.
func hand(t testing.TB) list.Maker { return load(t, "../testdata/byhand.toml") }

func cardOf(t testing.TB, m list.Maker, id string) laycard.Card {
	t.Helper()
	i, ok := m.S.Index.Branch[id]
	if !ok {
		t.Fatalf("there is no branch %s", id)
	}
	return laycard.CardOf(m, i)
}

// Each piece of each branch of the small loom, read off its file by hand: what it is, its colour as code
// and in words, its size, the cavity that it starts in, the branch that it goes on into, its end there,
// and the splice that it ends in on the way. The order is that of the lay-up, which others hold.
func TestRowsByHand(t *testing.T) {
	const (
		wire   = sheet.OfWire
		pair   = sheet.OfUnit
		spare  = sheet.OfSpare
		filler = sheet.OfFiller
	)
	want := map[string][]laycard.Row{
		"T1": {
			{ID: "C1", Kind: pair, Code: "9 + 6", Colour: "white + blue", Size: "2.9 mm", Starts: "C + D", Leaves: "L3", To: "LOG1:A + B"},
			{ID: "101", Kind: wire, Code: "2", Colour: "red", Size: "20 AWG", Starts: "A", Leaves: "T1", To: "splice S1", Splice: "S1"},
			{ID: "109", Kind: spare, Code: "91", Colour: "white/brown", Size: "22 AWG", Starts: "E", Leaves: "L1", To: "LMP1:3"},
			{ID: "110", Kind: wire, Code: "0", Colour: "black", Size: "20 AWG", Starts: "B", Leaves: "L4", To: "GND1:1"},
			{ID: "111", Kind: wire, Code: "5", Colour: "green", Size: "22 AWG", Starts: "F", Leaves: "L1", To: "LMP1:4"},
			{ID: "112", Kind: wire, Code: "54", Colour: "green/yellow", Size: "22 AWG", Starts: "G", Leaves: "L2", To: "LMP2:3"},
			{ID: "113", Kind: spare, Code: "95", Colour: "white/green", Size: "22 AWG", Starts: "H", To: "capped at J1"},
			{ID: "filler", Kind: filler, Size: "1.09 mm"}, {ID: "filler", Kind: filler, Size: "1.09 mm"},
			{ID: "filler", Kind: filler, Size: "1.09 mm"}, {ID: "filler", Kind: filler, Size: "1.09 mm"},
		},
		"L1": {
			{ID: "102", Code: "2", Colour: "red", Size: "22 AWG", Leaves: "LMP1", To: "LMP1:1"},
			{ID: "105", Code: "0", Colour: "black", Size: "22 AWG", Leaves: "LMP1", To: "LMP1:2"},
			{ID: "109", Kind: spare, Code: "91", Colour: "white/brown", Size: "22 AWG", Leaves: "LMP1", To: "LMP1:3"},
			{ID: "111", Code: "5", Colour: "green", Size: "22 AWG", Leaves: "LMP1", To: "LMP1:4"},
		},
		"L2": {
			{ID: "103", Code: "2", Colour: "red", Size: "22 AWG", Leaves: "LMP2", To: "LMP2:1"},
			{ID: "106", Code: "0", Colour: "black", Size: "22 AWG", Leaves: "LMP2", To: "LMP2:2"},
			{ID: "112", Code: "54", Colour: "green/yellow", Size: "22 AWG", Leaves: "LMP2", To: "LMP2:3"},
		},
		"L3": {
			{ID: "C1", Kind: pair, Code: "9 + 6", Colour: "white + blue", Size: "2.9 mm", Leaves: "LOG1", To: "LOG1:A + B"},
			{ID: "104", Code: "29", Colour: "red/white", Size: "22 AWG", Leaves: "LOG1", To: "LOG1:C"},
		},
		"L4": {
			{ID: "105", Code: "0", Colour: "black", Size: "22 AWG", Leaves: "GND1", To: "GND1:1"},
			{ID: "106", Code: "0", Colour: "black", Size: "22 AWG", Leaves: "GND1", To: "GND1:1"},
			{ID: "110", Code: "0", Colour: "black", Size: "20 AWG", Leaves: "GND1", To: "GND1:1"},
		},
	}
	m := hand(t)
	for id, rows := range want {
		var got []string
		for _, l := range cardOf(t, m, id).Layers {
			for n, r := range l.Rows {
				if r.Position != n+1 {
					t.Errorf("%s %s: position %d stands at %d", id, l.Name, r.Position, n+1)
				}
				if r.Tracer != (l.Index > 0 && n == 0) {
					t.Errorf("%s %s: %s is the tracer %v", id, l.Name, r.ID, r.Tracer)
				}
				r.Of, r.Position, r.Tracer = sheet.Member{}, 0, false
				got = append(got, fmt.Sprintf("%+v", r))
			}
		}
		var by []string
		for _, r := range rows {
			by = append(by, fmt.Sprintf("%+v", r))
		}
		slices.Sort(got)
		slices.Sort(by)
		if !slices.Equal(got, by) {
			t.Errorf("%s:\n%s\nby hand:\n%s", id, strings.Join(got, "\n"), strings.Join(by, "\n"))
		}
	}
}

// The trunk by hand. Over: 2.9 + 2 × 1.27 = 5.44 mm; lay 12 × 5.44 = 65.3, to 5 mm 65; it stops 25 mm of
// the zone of J1 and 5.44 before its end: 400 - 30.44 = 369.6 are laid. The sheath is cut 380 (byhand.txt);
// the bend is 6 × 5.44 = 32.6. P1's key is at 12 o'clock, so position 1 is in line with it.
func TestTrunkByHand(t *testing.T) {
	c := cardOf(t, hand(t), "T1")
	if c.Length != "400 mm, -2 +8, boot lip of P1 to J1" || c.Stops != "lay 370 of it" || c.OD != "5.4~ (5.3 to 5.5)" || c.Bend != "33 mm" {
		t.Errorf("%q, %q, OD %q, bend %q", c.Length, c.Stops, c.OD, c.Bend)
	}
	centre, outer := c.Layers[0], c.Layers[1]
	if centre.Name != "The centre" || centre.Hand != "straight" || centre.LayMM != 0 || centre.OD != "2.9" {
		t.Errorf("%+v", centre)
	}
	if outer.Hand != "LH" || outer.LayMM != 65 || outer.OD != "5.4" || outer.Fillers != "4 of 1.09 mm" ||
		!slices.Equal(sorted(strings.Fields(outer.Spares)), []string{"109", "113"}) || len(outer.Before) != 1 {
		t.Errorf("%+v", outer)
	}
	want := laycard.Cover{What: "sheath", Part: "AS23053/16 9.5", Shelf: "3/8 (9.5 / 4.8)", Stop: "375", Cut: "380", OD: "7.2"}
	got := c.Covers[0]
	got.Start, got.CutMM, got.Proposed = "", 0, false
	if len(c.Covers) != 1 || got != want {
		t.Errorf("covers %+v", c.Covers)
	}
	if !c.Start.Key.Set || c.Start.Key.V != 12 || !strings.Contains(c.Start.Says, "position 1 lies in line with its key") {
		t.Errorf("%+v", c.Start)
	}
	if !slices.Equal(c.Ends, []string{"P1, boot boot-straight-12, key at 12, label 9.5, loop 16", "J1 zone 25"}) {
		t.Errorf("%q", c.Ends)
	}
}

func sorted(all []string) []string {
	slices.Sort(all)
	return all
}

// The legs by hand: see byhand.txt for OD, cut and bend. What a wire is and where it ends stand in the
// same order, whatever that is.
func TestLegsByHand(t *testing.T) {
	m := hand(t)
	var legs []*laycard.Card
	for _, id := range []string{"L1", "L2", "L3", "L4"} {
		c := cardOf(t, m, id)
		legs = append(legs, &c)
	}
	table := laycard.LegTable(m, legs)
	wires := []map[string]string{
		{"102 red": "LMP1:1", "105 black": "LMP1:2", "109 white/brown": "LMP1:3", "111 green": "LMP1:4"},
		{"103 red": "LMP2:1", "106 black": "LMP2:2", "112 green/yellow": "LMP2:3"},
		{"C1 (white + blue)": "LOG1:A + B", "104 red/white": "LOG1:C"},
		{"105 black": "GND1:1", "106 black": "GND1:1", "110 black": "GND1:1"},
	}
	rest := [][]string{
		{"L1", "J1", "straight", "200 -0 +5", "4.8, 200", "-", "2.6", "16"},
		{"L2", "J1", "straight", "250", "3.2, 250", "-", "2.3", "14"},
		{"L3", "J1", "straight", "300", "6.4, 310", "key at 6", "4.0", "29"},
		{"L4", "J1", "straight", "150", "3.2, 140", "-", "2.5", "15"},
	}
	head := []string{"leg", "from", "wires in their order", "to", "lay, mm", "length, mm", "sheath, cut, mm", "boot", "OD, mm", "bend, mm",
		"laid"}
	if !slices.Equal(table.Head, head) || !strings.Contains(table.Note, "A sheath is AS23053/16 where the row names no other.") {
		t.Errorf("%q\n%s", table.Head, table.Note)
	}
	for k, row := range table.Rows {
		said, ends := strings.Split(row[2], ", "), strings.Split(row[3], ", ")
		term, _, _ := strings.Cut(ends[0], ":")
		for n, w := range said {
			end := ends[0]
			if len(ends) > 1 {
				end = ends[n]
			}
			if !strings.Contains(end, ":") {
				end = term + ":" + end
			}
			if want, is := wires[k][w]; !is || want != end {
				t.Errorf("%s: %s ends at %s, by hand %q", row[0], w, end, want)
			}
		}
		if len(said) != len(wires[k]) {
			t.Errorf("%s has %d pieces, by hand %d", row[0], len(said), len(wires[k]))
		}
		if got := append(slices.Clone(row[:2]), row[4:10]...); !slices.Equal(got, rest[k]) {
			t.Errorf("%q\nby hand %q", got, rest[k])
		}
	}
	if len(table.Rows) != 4 {
		t.Errorf("%d rows", len(table.Rows))
	}
}

// The pair by hand: twisted at 25 mm, cut to the longer of its two wires (byhand.txt: 1020), the shield 30
// mm before the contacts, a lead of 80.
func TestUnitsByHand(t *testing.T) {
	table := laycard.UnitTable(hand(t))
	head := []string{"unit", "name", "wires", "size", "lay, mm", "wires cut, mm", "OD, mm", "shield", "strip back, mm", "drain, mm",
		"drain from", "drain to", "solder sleeve", "made"}
	row := []string{"C1", "Bus pair", "107 white, 108 blue", "22 AWG", "25", "1020", "2.9", "yes", "30", "80", "shell",
		"cut", "size 3~", ""}
	if !slices.Equal(table.Head, head) || len(table.Rows) != 1 || !slices.Equal(table.Rows[0], row) {
		t.Errorf("%q\n%q", table.Head, table.Rows)
	}
}

// The splice by hand: 101 comes along the trunk, 102, 103 and 104 go on out of J1, 60 mm beyond the sleeve
// and 340 from P1.
func TestSpliceByHand(t *testing.T) {
	j := joint.Of(hand(t), 0)
	if j.ID != "S1" || j.Is != "101" || j.Becomes != "102, 103 and 104" || j.At != "J1" || j.Along != "T1" || j.From != "60 mm" ||
		j.Also != "340 mm from P1" || !j.Beyond || j.Part != "AS81824/1-2~" {
		t.Errorf("%+v", j)
	}
	if one, more := fmt.Sprint(j.One), fmt.Sprint(j.More); one != "[{101 red 20 AWG P1:A}]" ||
		more != "[{102 red 22 AWG LMP1:1} {103 red 22 AWG LMP2:1} {104 red/white 22 AWG LOG1:C}]" {
		t.Errorf("%s\n%s", one, more)
	}
	if says := j.Says(); says != "S1: wire 101 becomes 3 wires" {
		t.Error(says)
	}
	// The part is 3.60 thick (from memory), 101 1.27: 5.44 + 2.33.
	if j.Over != "7.8~" || j.Goes != "S1 to J1, in the place of 101: 102 into L1, 103 into L2, 104 into L3" {
		t.Errorf("over it %q; %s", j.Over, j.Goes)
	}
	if lies := j.Lies(); lies != "60 mm from the centre of J1, in T1, 340 mm from P1" {
		t.Error(lies)
	}
}

// The matrix by hand: no tube goes over two ends, so each end takes that of its own branch last.
func TestThreadsByHand(t *testing.T) {
	m := hand(t)
	want := map[string]string{"T1": "P1", "L1": "LMP1", "L2": "LMP2", "L3": "LOG1", "L4": "GND1"}
	all := laycard.Threads(m)
	for _, th := range all {
		if len(th.Ends) != 1 || m.H.Terminations[th.Ends[0]].ID != want[th.Of] || !th.Own {
			t.Errorf("%s goes over %v, own %v", th.Of, th.Ends, th.Own)
		}
	}
	if len(all) != 5 {
		t.Errorf("%d parts", len(all))
	}
}
