package figure

import (
	"encoding/json"
	"math"

	"contralay/calc/phase/wires"
	"contralay/calc/sheet"
	"contralay/model/unit"
)

// All is every computed number of a sheet, as one JSON object with stable
// key names. A figure without a value is null, never 0.
func All(s *sheet.Sheet) ([]byte, error) {
	h := s.H
	out := figures{
		Harness:  figHarness{h.Head.Name.V, h.Head.Number.V, h.Head.Revision.V},
		Totals:   figureTotals(s),
		Branches: []figBranch{}, Wires: []figWire{}, Terminations: []figTerm{}, Feeds: []figFeed{}, Snags: []figSnag{},
	}
	for i := range s.Branches {
		out.Branches = append(out.Branches, branch(s, i))
	}
	for i := range s.Wires {
		out.Wires = append(out.Wires, wire(s, i))
	}
	for i := range s.Terms {
		out.Terminations = append(out.Terminations, term(s, i))
	}
	for i := range s.Feeds {
		out.Feeds = append(out.Feeds, feed(s, i))
	}
	for _, g := range sheet.Worst(s.Snags) {
		out.Snags = append(out.Snags, figSnag{g.Level.String(), g.Rule, g.Where, g.Says})
	}
	b, err := json.MarshalIndent(out, "", "  ")
	if err != nil {
		return nil, err
	}
	return append(b, '\n'), nil
}

type figures struct {
	Harness      figHarness  `json:"harness"`
	Totals       figTotals   `json:"totals"`
	Branches     []figBranch `json:"branches"`
	Wires        []figWire   `json:"wires"`
	Terminations []figTerm   `json:"terminations"`
	Feeds        []figFeed   `json:"feeds"`
	Snags        []figSnag   `json:"snags"`
}

type figHarness struct {
	Name     string `json:"name"`
	Number   string `json:"number"`
	Revision string `json:"revision"`
}

type figTotals struct {
	Wires   int      `json:"wires"`
	Units   int      `json:"units"`
	Spares  int      `json:"spares"`
	Fillers int      `json:"fillers"`
	WireM   float64  `json:"wire_m"`
	MassG   *float64 `json:"mass_g"`
}

type figBranch struct {
	ID       string     `json:"id"`
	Make     string     `json:"make"`
	Proposed bool       `json:"proposed"`
	OverMM   *float64   `json:"over_mm"`
	OverMin  *float64   `json:"over_min_mm"`
	OverMax  *float64   `json:"over_max_mm"`
	TapeMM   *float64   `json:"tape_mm"`
	Predicts *float64   `json:"predicted_over_mm,omitempty"`
	Learned  *float64   `json:"learned_over_mm,omitempty"`
	Spread   *float64   `json:"learned_spread_mm,omitempty"`
	MassG    *float64   `json:"mass_g"`
	HottestC *float64   `json:"hottest_c"`
	Layers   []figLayer `json:"layers"`
	Bend     *figBend   `json:"bend"`
	Sheath   *figSheath `json:"sheath"`
	Covers   []figCover `json:"covers"`
}

type figLayer struct {
	Index    int      `json:"index"`
	Members  []string `json:"members"`
	Fillers  int      `json:"fillers"`
	FillerMM *float64 `json:"filler_mm"`
	Spares   int      `json:"spares"`
	Takes    *int     `json:"takes"`
	Room     *int     `json:"room"`
	Gap      *float64 `json:"gap"`
	BedMM    *float64 `json:"bed_mm"`
	OverMM   float64  `json:"over_mm"`
	TapeMM   float64  `json:"tape_mm"`
	BuiltTo  *float64 `json:"built_to_mm"`
	BuiltMM  *float64 `json:"built_mm"`
	BuiltOf  *string  `json:"built_of"`
	LayMM    *float64 `json:"lay_mm"`
	Turns    *float64 `json:"turns"`
	LayDeg   float64  `json:"lay_deg"`
	Hand     string   `json:"hand"`
	LayLoss  float64  `json:"lay_loss"`
	ProudMM  float64  `json:"proud_mm"`
}

type figBend struct {
	MinMM      float64  `json:"min_mm"`
	Rule       string   `json:"rule"`
	MismatchMM *float64 `json:"mismatch_mm"`
}

type figSheath struct {
	Part      *string  `json:"part"`
	Proposed  bool     `json:"proposed"`
	Slides    *bool    `json:"slides"`
	Grips     *bool    `json:"grips"`
	SlideMM   *float64 `json:"slide_mm"`
	GripRatio *float64 `json:"grip_ratio"`
	WallMM    *float64 `json:"wall_mm"`
	OverMM    *float64 `json:"over_mm"`
	CutMM     *float64 `json:"cut_mm"`
}

// figCover is one cover of a branch, its sheath among them, inside out.
type figCover struct {
	What    string   `json:"what"`
	Part    *string  `json:"part"`
	FromMM  float64  `json:"from_mm"`
	ToMM    float64  `json:"to_mm"`
	ThickMM *float64 `json:"thick_mm"`
	OverMM  *float64 `json:"over_mm"`
	CutMM   *float64 `json:"cut_mm"`
	GoesOn  string   `json:"goes_on"`
}

type figWire struct {
	ID         string   `json:"id"`
	CutMM      *float64 `json:"cut_mm"`
	FinishedMM *float64 `json:"finished_mm"`
	Path       []string `json:"path"`
	DropV      *float64 `json:"drop_v"`
	CarriesA   *float64 `json:"carries_a"`
	LimitA     *float64 `json:"limit_a"`
	LimitedBy  *string  `json:"limited_by"`
	HottestC   *float64 `json:"hottest_c"`
}

type figTerm struct {
	ID        string `json:"id"`
	Used      int    `json:"used"`
	Spare     int    `json:"spare"`
	Reserved  int    `json:"reserved"`
	Blank     int    `json:"blank"`
	Contacts  *int   `json:"contacts"`
	SealPlugs *int   `json:"seal_plugs"`
}

type figFeed struct {
	ID     string   `json:"id"`
	LoadA  *float64 `json:"load_a"`
	MostA  *float64 `json:"most_a"`
	OpensA *float64 `json:"opens_a"`
}

type figSnag struct {
	Level string `json:"level"`
	Rule  string `json:"rule"`
	Where string `json:"where"`
	Says  string `json:"says"`
}

func figureTotals(s *sheet.Sheet) figTotals {
	f := figTotals{Wires: s.Totals.Wires, Units: s.Totals.Units, Spares: s.Totals.Spares, Fillers: s.Totals.Fillers,
		WireM: round(float64(s.Totals.WireMM)/1000, 4)}
	if s.Totals.Gram.Set {
		f.MassG = some(round(float64(s.Totals.Gram.V), 3))
	}
	return f
}

func term(s *sheet.Sheet, i int) figTerm {
	t := &s.Terms[i]
	f := figTerm{ID: s.H.Terminations[i].ID, Used: t.Used, Spare: t.Spare, Reserved: t.Reserved, Blank: t.Blank}
	if t.HasContacts {
		f.Contacts, f.SealPlugs = &t.Contacts, &t.SealPlugs
	}
	return f
}

func branch(s *sheet.Sheet, i int) figBranch {
	b := &s.Branches[i]
	f := figBranch{ID: s.H.Branches[i].ID, Make: string(b.Make), Proposed: b.Proposed, Layers: []figLayer{}, Covers: []figCover{}}
	if b.OverMM <= 0 {
		return f
	}
	f.OverMM, f.OverMin, f.OverMax, f.TapeMM = mm(b.OverMM), mm(b.OverMinMM), mm(b.OverMaxMM), mm(b.TapeMM)
	if l := &b.Learned; l.Of != "" {
		f.Predicts, f.Learned, f.Spread = mm(l.PredictedMM), mm(b.OverMM-l.PredictedMM), mm(b.OverMM*unit.Millimetre(l.Spread))
	}
	if b.Gram.Set {
		f.MassG = some(round(float64(b.Gram.V), 3))
	}
	if b.Warm.Known {
		f.HottestC = some(round(float64(b.Warm.HottestC), 2))
	}
	for k := range b.Layers {
		f.Layers = append(f.Layers, layer(b, k))
		if !s.H.Branches[i].Measured() {
			f.Layers[k].Turns = nil
		}
	}
	f.Bend = bend(b)
	f.Sheath = sheath(&b.Sheath)
	f.Covers = covers(b)
	return f
}

func bend(b *sheet.Branch) *figBend {
	f := &figBend{MinMM: *mm(b.Bend.MinMM), Rule: b.Bend.Rule}
	if b.Bend.MismatchMM.Set {
		f.MismatchMM = mm(b.Bend.MismatchMM.V)
	}
	return f
}

func layer(b *sheet.Branch, k int) figLayer {
	l := &b.Layers[k]
	f := figLayer{Index: k, Members: []string{}, Fillers: l.Fillers, Spares: l.Spares,
		OverMM: *mm(l.OverMM), TapeMM: *mm(l.TapeMM), LayDeg: round(float64(l.LayDeg), 4), Hand: string(l.Hand),
		LayLoss: round(float64(l.Loss), 6), ProudMM: *mm(l.ProudMM)}
	for _, m := range l.Members {
		f.Members = append(f.Members, m.ID)
	}
	if l.BuiltMM > 0 {
		f.BuiltTo, f.BuiltMM = mm(l.OverMM), mm(l.BuiltMM)
		if l.BuiltOf != "" {
			f.BuiltOf = some(l.BuiltOf)
		}
	}
	if l.Fillers > 0 {
		f.FillerMM = mm(l.FillerMM)
	}
	if k > 0 {
		f.Takes, f.Room, f.Gap, f.BedMM = some(l.Takes), some(l.Room), some(round(float64(l.Gap), 6)), mm(l.BedMM)
	}
	if l.LayMM > 0 {
		f.LayMM, f.Turns = mm(l.LayMM), some(round(float64(l.Turns), 4))
	}
	return f
}

func sheath(sh *sheet.Sheath) *figSheath {
	f := &figSheath{Proposed: sh.Proposed}
	if sh.Part == "" {
		return f
	}
	f.Part = some(sh.Part)
	if !sh.Tube.Set {
		return f
	}
	v := sh.Verdict
	f.Slides = some(!v.StopSlide && v.Slides.Kept)
	f.Grips = some(!v.StopLoose && v.Grips.Kept)
	f.SlideMM, f.GripRatio = mm(v.SlideMM), some(round(float64(v.GripRatio), 4))
	if v.Wraps {
		f.WallMM, f.OverMM = mm(v.WallMM), mm(v.OverMM)
	}
	f.CutMM = mm(sh.CutMM)
	return f
}

// covers are those of a branch, inside out. What is not known of one is null.
func covers(b *sheet.Branch) []figCover {
	out := []figCover{}
	put := func(c *sheet.Covered) {
		f := figCover{What: string(c.What), FromMM: *mm(c.FromMM), ToMM: *mm(c.ToMM), GoesOn: string(c.GoesOn())}
		if c.Part != "" {
			f.Part = some(c.Part)
		}
		if c.ThickMM > 0 {
			f.ThickMM, f.OverMM = mm(c.ThickMM), mm(c.OverMM)
		}
		if c.CutMM > 0 {
			f.CutMM = mm(c.CutMM)
		}
		out = append(out, f)
	}
	sheathed := b.Sheath.Part == ""
	for k := range b.Covers {
		if c := &b.Covers[k]; !sheathed && !c.Under {
			put(b.Sheath.AsCover())
			sheathed = true
		}
		put(&b.Covers[k])
	}
	if !sheathed {
		put(b.Sheath.AsCover())
	}
	return out
}

func wire(s *sheet.Sheet, i int) figWire {
	w := &s.Wires[i]
	f := figWire{ID: s.H.Wires[i].ID, Path: []string{}}
	for _, b := range w.Path {
		f.Path = append(f.Path, s.H.Branches[b].ID)
	}
	if w.Finished > 0 {
		f.CutMM, f.FinishedMM = mm(w.Cut), mm(w.Finished)
		if w.Drop.Set {
			f.DropV = some(round(float64(w.Drop.V), 5))
		}
	}
	if wires.Carries(s, i) {
		f.CarriesA = some(round(float64(w.Heats), 3))
	}
	if w.Bound.Set {
		f.LimitA, f.LimitedBy = some(round(float64(w.Bound.V.Amps), 2)), some(w.Bound.V.Where)
	}
	if w.HottestC.Set {
		f.HottestC = some(round(float64(w.HottestC.V), 2))
	}
	return f
}

func feed(s *sheet.Sheet, i int) figFeed {
	f, fd := figFeed{ID: s.H.Feeds[i].ID}, &s.Feeds[i]
	if fd.Device.Set {
		f.LoadA, f.MostA, f.OpensA = some(round(float64(fd.Load), 3)), some(round(float64(fd.Most), 3)),
			some(round(float64(fd.Device.V.NeedsToOpen()), 3))
	}
	return f
}

func some[T any](v T) *T { return &v }

// mm is a length to the micrometre: finer digits would only show the arithmetic.
func mm(v unit.Millimetre) *float64 { return some(round(float64(v), 3)) }

func round(v float64, n int) float64 {
	p := math.Pow(10, float64(n))
	return math.Round(v*p)/p + 0
}
