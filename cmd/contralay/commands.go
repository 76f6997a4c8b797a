package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"contralay/calc"
	"contralay/calc/formula/lay"
	"contralay/calc/formula/plan"
	"contralay/calc/query/offer"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/paper"
	"contralay/ui/paper/figure"
)

func newFile(name string) (int, error) {
	if _, err := os.Lstat(name); err == nil {
		return usage, fmt.Errorf("%s exists already and was not changed", name)
	} else if !errors.Is(err, fs.ErrNotExist) {
		return usage, err
	}
	d := file.Document{Harness: model.Harness{Head: model.Head{
		Name: model.Some(""), Number: model.Some(""), Revision: model.Some("A"), SupplyV: model.Some[unit.Volt](13.8),
		Units: model.Some("mm"),
	}}, Head: "# A wiring harness. Values are mm, A, V, degrees C and g.\n"}
	return ok, file.Save(name, d)
}

func read(name string, w world) (file.Document, error) {
	if name == "-" {
		return file.Read(w.in, "standard input")
	}
	return file.Load(name)
}

// shopNames are the files that are merged over the embedded catalogue, in this order: the
// shop's own from the configuration folder, its corrections, and --catalogue.
func shopNames(o options, w world) []string {
	var names []string
	if dir := configDir(w); dir != "" {
		for _, name := range []string{"catalogue.toml", correctionsName} {
			own := filepath.Join(dir, "contralay", name)
			if _, err := os.Lstat(own); err == nil { // a link that leads nowhere is told, not passed over
				names = append(names, own)
			}
		}
	}
	if o.catalogue != "" {
		names = append(names, o.catalogue)
	}
	return names
}

// entries merges the embedded catalogue and the files of shopNames; later ones win.
func entries(o options, w world) (*catalogue.Catalogue, error) {
	cat, err := catalogue.Default()
	if err != nil {
		return nil, err
	}
	for _, n := range shopNames(o, w) {
		text, err := file.Bytes(n, "the catalogue", catalogue.MostBytes)
		if err != nil {
			return nil, err
		}
		shop, err := catalogue.Read(bytes.NewReader(text), n)
		if err != nil {
			return nil, err
		}
		cat = catalogue.Merge(cat, shop)
	}
	return cat, nil
}

// configDir is the user's configuration folder by the XDG base directory rules.
func configDir(w world) string {
	if d := w.env("XDG_CONFIG_HOME"); filepath.IsAbs(d) {
		return d
	}
	d, err := os.UserConfigDir()
	if err != nil {
		return ""
	}
	return d
}

func sheetOf(name string, o options, w world) (*sheet.Sheet, error) {
	d, err := read(name, w)
	if err != nil {
		return nil, err
	}
	cat, err := entries(o, w)
	if err != nil {
		return nil, err
	}
	return slowly(w, "working out lay-ups", func() *sheet.Sheet { return calc.Complete(&d.Harness, cat, nil) }), nil
}

func check(name string, o options, w world) (int, error) {
	s, err := sheetOf(name, o, w)
	if err != nil {
		return usage, err
	}
	if err := print(w.out, paper.Check(s)); err != nil {
		return usage, err
	}
	for _, g := range s.Snags {
		if g.Level == sheet.Stop {
			return stopped, nil
		}
	}
	return ok, nil
}

func figuresOf(name string, o options, w world) (int, error) {
	s, err := sheetOf(name, o, w)
	if err != nil {
		return usage, err
	}
	b, err := figure.All(s)
	if err != nil {
		return usage, err
	}
	return ok, printJSON(w.out, b)
}

func planOf(args []string, o options, w world) (int, error) {
	if len(args) == 0 {
		return usage, misuse{"plan needs sizes, each with its quantity first: 32x22 4x20 2x2.9mm (contralay --help)"}
	}
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	l := model.Rules{}.Resolve()
	ask := plan.Ask{Spares: o.spares, Rules: plan.Rules{LayRatio: unit.Ratio(o.ratio), LiftMax: l.LiftMax, LiftTight: l.LiftTight,
		GapInner: l.GapInner, GapOuter: l.GapOuter, LumpyAt: l.LumpyAt, FillerWeight: l.FillerWeight, SpareGain: l.SpareGain}}
	switch o.centres {
	case "equal":
		ask.Centres = plan.EqualCentres
	case "unequal":
		ask.Centres = plan.UnequalCentres
	case "built":
		ask.Centres = plan.BuiltCentres
	}
	var pieces []offer.Piece
	for _, a := range args {
		z, err := sizeArg(a, l.Spec, cat)
		if err != nil {
			return usage, err
		}
		pieces = append(pieces, z)
		ask.Sizes = append(ask.Sizes, plan.Size{D: z.OverMM, N: z.N})
	}
	ask.Effort, ask.Round = o.effort, o.layers
	if err := centreOf(&ask, o.centre, l.Spec, cat); err != nil {
		return usage, err
	}
	var as []*sheet.Branch
	ps := slowly(w, "working out lay-ups", func() []plan.Plan {
		ps := plan.Make(ask)
		for _, p := range ps {
			b, _ := offer.Planned(p, pieces, model.Rules{LayRatio: model.Some(unit.Ratio(o.ratio))}, cat)
			as = append(as, b)
		}
		return ps
	})
	if !o.json {
		return ok, print(w.out, paper.Plans(ps, as))
	}
	b, err := figure.Plans(ps, as)
	if err != nil {
		return usage, err
	}
	return ok, printJSON(w.out, b)
}

// mostOfOne bounds a quantity: more is no hand-laid bundle.
const mostOfOne = 500

// centreOf holds the centre that --centre names: a number of pieces, or the pieces themselves.
func centreOf(ask *plan.Ask, centre, spec string, cat *catalogue.Catalogue) error {
	if centre == "" {
		return nil
	}
	if n, err := strconv.Atoi(centre); err == nil {
		if n < 1 || n > 5 {
			return misuse{fmt.Sprintf("--centre %q: a centre holds 1 to 5 pieces", centre)}
		}
		ask.CentreN = n
		return nil
	}
	held := plan.Held{Locked: true}
	var all []unit.Millimetre
	for part := range strings.SplitSeq(centre, ",") {
		z, err := sizeArg(part, spec, cat)
		if err != nil {
			return err
		}
		have := 0
		for _, s := range ask.Sizes {
			if s.D == z.OverMM {
				have += s.N
			}
		}
		if z.N > have {
			return misuse{fmt.Sprintf("--centre %q: it names %s, and the pieces to lay have %d of that size", centre, part, have)}
		}
		held.Sizes = append(held.Sizes, plan.Size{D: z.OverMM, N: z.N})
		for range z.N {
			all = append(all, z.OverMM)
		}
	}
	if !lay.CanBeCentre(all) {
		return misuse{fmt.Sprintf("--centre %q: a centre is one piece, two to five of one size, or two or three of different sizes",
			centre)}
	}
	ask.Held = append(ask.Held, held)
	return nil
}

func sizeArg(a, spec string, cat *catalogue.Catalogue) (offer.Piece, error) {
	q, size, found := strings.Cut(strings.ToLower(a), "x")
	n, err := strconv.Atoi(q)
	if !found || err != nil || n < 1 || n > mostOfOne {
		return offer.Piece{}, misuse{fmt.Sprintf("%q: write quantity x size, such as 32x22 or 2x2.9mm. The quantity is 1 to %d", a,
			mostOfOne)}
	}
	if t, isMM := strings.CutSuffix(size, "mm"); isMM {
		d, err := unit.ParseNumber(t)
		if err != nil || d < 0.1 || d > 50 {
			return offer.Piece{}, misuse{fmt.Sprintf("%q: the diameter must be 0.1 to 50 mm", a)}
		}
		return offer.Piece{OverMM: unit.Millimetre(d), N: n}, nil
	}
	e, known := cat.Wire(spec, size)
	if !known {
		return offer.Piece{}, misuse{fmt.Sprintf("%q: %s has no size %s. It has %s", a, spec, size, strings.Join(cat.Sizes(spec), " "))}
	}
	return offer.Piece{Spec: spec, Size: size, OverMM: e.OverMM, N: n}, nil
}
