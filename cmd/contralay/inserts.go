package main

import (
	"fmt"
	"strings"

	"contralay/calc/query/inserts"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/ui/paper/which"
	"contralay/ui/question"
)

// insertsOf ranks the arrangements that take a handful of wires. It is asked in wires, as plan is,
// never in part numbers.
func insertsOf(args []string, o options, w world) (int, error) {
	if len(args)+len(o.pairs)+len(o.shielded) == 0 {
		return usage, misuse{"inserts needs wires, each with its quantity first: 32x22 4x20 2x2.9mm (contralay --help)"}
	}
	cat, err := entries(o, w)
	if err != nil {
		return usage, err
	}
	spec := model.Rules{}.Resolve().Spec
	if o.spec != "" {
		if len(cat.Sizes(o.spec)) == 0 {
			return usage, misuse{fmt.Sprintf("--spec %q: there is no such wire. The catalogue has %s", o.spec,
				strings.Join(cat.Specs(), ", "))}
		}
		spec = o.spec
	}
	want := inserts.Want{Spares: o.spares}
	for _, a := range args {
		x, err := wireArg(a, spec, cat)
		if err != nil {
			return usage, err
		}
		want.Wires = append(want.Wires, x)
	}
	for _, p := range []struct {
		flag     string
		given    []string
		shielded bool
	}{{"pairs", o.pairs, false}, {"shielded", o.shielded, true}} {
		for _, a := range p.given {
			x, err := pairArg(p.flag, a, spec, want.Wires, cat)
			if err != nil {
				return usage, err
			}
			want.Pairs = append(want.Pairs, inserts.Pair{Wire: x, Shielded: p.shielded})
		}
	}
	a := inserts.Rank(cat, want)
	if !o.json {
		return ok, print(w.out, which.Text(a, o.full))
	}
	b, err := which.JSON(a)
	if err != nil {
		return usage, err
	}
	return ok, printJSON(w.out, b)
}

// wireArg reads quantity x size, where the size is a gauge or a diameter.
func wireArg(a, spec string, cat *catalogue.Catalogue) (inserts.Wire, error) {
	z, err := question.Piece(a, spec, cat)
	if err != nil {
		return inserts.Wire{}, misuse{err.Error()}
	}
	_, size, _ := strings.Cut(strings.ToLower(a), "x")
	if strings.HasSuffix(size, "mm") {
		return inserts.Wire{OverMM: z.OverMM, Count: z.N}, nil
	}
	return inserts.Wire{Spec: spec, Size: catalogue.CanonicalSize(size), Count: z.N}, nil
}

// pairArg reads how many pairs: a number alone is of the first gauge that was asked for, or of 22 AWG.
func pairArg(flag, a, spec string, asked []inserts.Wire, cat *catalogue.Catalogue) (inserts.Wire, error) {
	text := a
	if !strings.Contains(strings.ToLower(a), "x") {
		text += "x22"
		for _, x := range asked {
			if x.Size != "" {
				text = a + "x" + x.Size
				break
			}
		}
	}
	x, err := wireArg(text, spec, cat)
	if err != nil {
		return x, misuse{fmt.Sprintf("--%s %q: write how many pairs, such as 2, or how many of which wire, such as 2x24", flag, a)}
	}
	return x, nil
}
