package add

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
)

// encoded is a harness as a file has it.
func encoded(h *model.Harness) []byte { return file.Encode(file.Document{Harness: *h}) }

// Whatever is added to whatever there is: it loads as it was saved, no two things stand in one
// cavity, no id is there twice, there are as many wires as the kind has cavities and no more than
// one feed for each of its feeds, and the harness before is as it was.
func TestAnythingAdded(t *testing.T) {
	cat := calctest.Catalogue(t)
	inserts := cat.InsertIDs()
	rapid.Check(t, func(t *rapid.T) {
		s := calc.Build(&model.Harness{}, cat, nil)
		places := []string{""}
		ends := []string{""}
		for range rapid.IntRange(1, 3).Draw(t, "connectors") {
			ask := ConnectorAsk{Insert: rapid.SampledFrom(inserts).Draw(t, "insert")}
			if rapid.Bool().Draw(t, "plain") {
				ask = ConnectorAsk{Cavities: rapid.IntRange(1, 12).Draw(t, "cavities"),
					Contact: rapid.SampledFrom([]string{"", "20", "16", "22D"}).Draw(t, "contact")}
			}
			a, err := Connector(s, ask)
			if err != nil {
				t.Fatal(err)
			}
			s = held(t, s, a)
			ends = append(ends, a.Terminations[0])
		}
		h := *s.H
		h.Breakouts = []model.Breakout{{ID: "J1"}, {ID: "J2"}}
		h.Branches = []model.Branch{{ID: "T1", From: "P1", To: "J1", LengthMM: 500}, {ID: "T2", From: "J1", To: "J2", LengthMM: 300}}
		places = append(places, "J1", "J2", "P1")
		s = calc.Build(&h, cat, nil)
		for range rapid.IntRange(1, 5).Draw(t, "times") {
			if rapid.IntRange(0, 4).Draw(t, "what") == 0 {
				spares(t, &s, ends)
				continue
			}
			kind := rapid.SampledFrom(cat.Devices).Draw(t, "kind")
			ask := DevicesAsk{Kind: kind.ID, Count: rapid.IntRange(1, 6).Draw(t, "count"), At: rapid.SampledFrom(places).Draw(t, "at"),
				Controller: rapid.SampledFrom(ends).Draw(t, "controller"), Feed: rapid.SampledFrom(Feedings).Draw(t, "feed"),
				Name: rapid.SampledFrom(kind.Names).Draw(t, "name"),
				Spec: rapid.SampledFrom([]string{"", "AS22759/44", "SAE J1128 TXL", "ISO 6722 thin", "own"}).Draw(t, "spec"),
				Size: rapid.SampledFrom([]string{"", "", "20", "0.5mm2"}).Draw(t, "size"),
				Ends: map[string]string{rapid.SampledFrom(kind.Carries).Draw(t, "row").Far: rapid.SampledFrom(ends).Draw(t, "far")}}
			for range ask.Count {
				ask.LengthsMM = append(ask.LengthsMM, unit.Millimetre(rapid.IntRange(1, 900).Draw(t, "length")))
			}
			before := encoded(s.H)
			a, err := Devices(s, ask)
			if err != nil {
				t.Fatal(err)
			}
			first := encoded(a.H)
			if b, err := Devices(s, ask); err != nil || !bytes.Equal(first, encoded(b.H)) || !bytes.Equal(first, encoded(a.H)) {
				t.Fatalf("the same again is other: %v", err)
			}
			if _, err := Devices(s, DevicesAsk{Kind: "coil-cord", Count: 2, At: "J1", Controller: "P1"}); err != nil ||
				!bytes.Equal(before, encoded(s.H)) || !bytes.Equal(first, encoded(a.H)) {
				t.Fatalf("the harness before is changed, or another that was made of it: %v", err)
			}
			count(t, s, kind, ask, a)
			s = held(t, s, a)
			if rapid.Bool().Draw(t, "lay") { // what is laid in the file takes what comes later
				s = laid(s)
			}
		}
	})
}

// laid is a sheet with its proposals written into the harness.
func laid(s *sheet.Sheet) *sheet.Sheet {
	s = calc.Complete(s.H, s.Base, s)
	h := s.H
	for b := range s.Branches {
		if out := &s.Branches[b]; out.Proposed && len(out.As) > 0 {
			h = h.EditBranch(b, func(b *model.Branch) { b.Make, b.Layers = model.Some(out.Make), model.CloneLayers(out.As) })
		}
	}
	return calc.Build(h, s.Base, nil)
}

func spares(t *rapid.T, s **sheet.Sheet, ends []string) {
	ask := SparesAsk{Count: rapid.IntRange(1, 5).Draw(t, "spares"), From: rapid.SampledFrom(ends[1:]).Draw(t, "from")}
	if rapid.Bool().Draw(t, "capped") {
		ask.CappedAt = "J2"
	} else {
		ask.To = rapid.SampledFrom(ends[1:]).Draw(t, "to")
	}
	before := encoded((*s).H)
	a, err := Spares(*s, ask)
	if err != nil {
		if !bytes.Equal(before, encoded(a.H)) || !strings.Contains(err.Error(), "allowed: ") {
			t.Fatalf("%v: changed, or it does not say what is allowed", err)
		}
		return
	}
	if len(a.Wires) > ask.Count || len(a.H.Wires) != len((*s).H.Wires)+len(a.Wires) {
		t.Fatalf("%d spares of %d", len(a.Wires), ask.Count)
	}
	*s = held(t, *s, a)
}

// never are the rules that nothing added breaks.
var never = []string{"cavity.alias", "cavity.none", "cavity.twice", "cavity.seal", "cavity.barrel", "layer.empty", "layer.full",
	"layer.missing",
	"layer.stray", "layer.unit", "unit.build", "splice.place", "splice.barrel", "list.joins", "transition.outlets"}

// ended reports whether both ends of a wire are joined by branches.
func ended(s *sheet.Sheet, w model.Wire) bool {
	from, to, ok := s.Index.Places(&w)
	_, joined := s.Index.Between(from, to)
	return ok && joined
}

// held is the sheet of what was added, after what must hold for anything added.
func held(t *rapid.T, s *sheet.Sheet, a Added) *sheet.Sheet {
	if bytes.Equal(encoded(s.H), encoded(a.H)) {
		t.Fatal("nothing was added")
	}
	text := encoded(a.H)
	d, err := file.Parse(text, "added.toml")
	if err != nil {
		t.Fatalf("it does not load: %v\n%s", err, text)
	}
	if again := file.Encode(d); !bytes.Equal(text, again) {
		t.Fatalf("it is saved otherwise:\n%s\n%s", text, again)
	}
	out := calc.Build(a.H, s.Base, nil)
	for _, g := range out.Snags {
		if g.Level == sheet.Stop && slices.Contains(never, g.Rule) {
			t.Fatalf("%+v\n%s", g, text)
		}
		if g.Level == sheet.Stop && g.Rule == "unit.size" &&
			a.H.Wires[out.Index.Wire[a.H.Units[out.Index.Unit[g.Where]].Wires[0]]].Spec != "own" {
			t.Fatalf("%+v\n%s", g, text) // a specification that no catalogue has is told
		}
		if g.Level == sheet.Stop && g.Rule == "unit.path" {
			for _, id := range a.H.Units[out.Index.Unit[g.Where]].Wires {
				if w := a.H.Wires[out.Index.Wire[id]]; out.Wires[out.Index.Wire[id]].HasPath || w.From.Set && w.To.Set && ended(out, w) {
					t.Fatalf("%+v: wire %s has a way\n%s", g, id, text)
				}
			}
		}
		if g.Level == sheet.Stop && g.Rule == "wire.path" {
			if w := a.H.Wires[out.Index.Wire[g.Where]]; w.From.Set && w.To.Set && ended(out, w) {
				t.Fatalf("%+v\n%s", g, text)
			}
		}
	}
	used := map[string]string{}
	take := func(end, who string) {
		if strings.Contains(end, ":") {
			if other := used[end]; other != "" {
				t.Fatalf("%s holds %s and %s", end, other, who)
			}
			used[end] = who
		}
	}
	for _, w := range a.H.Wires {
		take(w.From.V, w.ID)
		take(w.To.V, w.ID)
	}
	for _, u := range a.H.Units {
		take(u.DrainFrom.V, u.ID)
		take(u.DrainTo.V, u.ID)
	}
	return out
}

// count holds the number of wires, splices and legs to the kind's rows.
func count(t *rapid.T, s *sheet.Sheet, kind catalogue.Device, ask DevicesAsk, a Added) {
	feeds := len(a.Splices)
	inRows := 0
	for _, c := range kind.Carries {
		if c.Feed != "" {
			inRows++
		}
	}
	if got, want := len(a.Wires), kind.Cavities*ask.Count+feeds; got != want || len(a.H.Wires) != len(s.H.Wires)+want {
		t.Fatalf("%d wires, want %d", got, want)
	}
	if feeds > inRows || feeds > 0 && (ask.Count == 1 || ask.Feed == FeedEach) {
		t.Fatalf("%d splices for %d feeds of %d devices", feeds, inRows, ask.Count)
	}
	legs := ask.Count
	if ask.At == "" {
		legs = 0
	}
	if len(a.Branches) != legs || len(a.H.Branches) != len(s.H.Branches)+legs || len(a.Terminations) != ask.Count {
		t.Fatalf("%d legs, %d ends for %d devices", len(a.Branches), len(a.Terminations), ask.Count)
	}
	told := map[string]bool{}
	for _, g := range a.Says {
		if g.Says == "" || strings.Contains(g.Says, "%!") {
			t.Fatalf("%+v", g)
		}
		for _, id := range g.Of {
			told[g.About+" "+id] = true
		}
	}
	for _, id := range a.Wires {
		w := a.H.Wires[slices.IndexFunc(a.H.Wires, func(w model.Wire) bool { return w.ID == id })]
		for about, given := range map[string]bool{"size": ask.Size == "", "amps": w.Amps.Set,
			"on_s":   w.OnS.Set && !strings.HasPrefix(w.To.V, "S"),
			"return": w.Return.Set, "colour": true} {
			if given && !told[about+" "+id] && !(about == "size" && kind.Outside != "" && feeds > 0) {
				t.Fatalf("%s of %s is not told: %+v", about, id, a.Says)
			}
		}
	}
}
