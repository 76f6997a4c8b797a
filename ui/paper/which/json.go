package which

import (
	"encoding/json"

	"contralay/calc/query/inserts"
)

// kindOut is so many of one wire, drain or spare.
type kindOut struct {
	Wire    string   `json:"wire"`
	For     string   `json:"for"`
	Count   int      `json:"count"`
	OverMM  *float64 `json:"over_mm"`
	Contact string   `json:"contact,omitempty"`
}

type sealOut struct {
	kindOut
	MinMM    float64 `json:"min_mm"`
	MaxMM    float64 `json:"max_mm"`
	Standing string  `json:"standing"`
}

type leftOut struct {
	Size  string `json:"size"`
	Count int    `json:"count"`
}

type largerOut struct {
	ID   string `json:"id"`
	More int    `json:"more"`
}

type fitOut struct {
	ID          string     `json:"id"`
	Aliases     []string   `json:"aliases"`
	Shell       *int       `json:"shell"`
	Free        int        `json:"free"`
	Left        []leftOut  `json:"left"`
	Goes        []kindOut  `json:"goes"`
	Seals       []sealOut  `json:"seals"`
	SealUnknown []kindOut  `json:"seal_unknown"`
	Qualified   bool       `json:"qualified"`
	Larger      *largerOut `json:"larger"`
}

type nearOut struct {
	ID    string    `json:"id"`
	Lacks []kindOut `json:"lacks"`
}

// JSON is the whole answer; what has no value is null.
func JSON(a inserts.Answer) ([]byte, error) {
	out := struct {
		Asked     []kindOut `json:"asked"`
		Fits      []fitOut  `json:"fits"`
		None      []kindOut `json:"none"`
		Nearest   *nearOut  `json:"nearest"`
		NotJudged []string  `json:"not_judged"`
	}{kindsOut(a.Kinds), []fitOut{}, []kindOut{}, nil, append([]string{}, a.NotJudged...)}
	for _, r := range a.None {
		out.None = append(out.None, kindsOut([]inserts.Kind{r.Kind})...)
	}
	if n := a.Nearest; n != nil {
		out.Nearest = &nearOut{n.Insert.ID, kindsOut(n.Lacks)}
	}
	for _, f := range a.Fits {
		all, _ := f.Insert.Qualified()
		o := fitOut{ID: f.Insert.ID, Aliases: append([]string{}, f.Insert.Aliases...), Free: f.Free, Qualified: all,
			Left: []leftOut{}, Goes: goesOut(f.Goes), Seals: []sealOut{}, SealUnknown: goesOut(f.Unseen)}
		if f.Insert.Shell > 0 {
			o.Shell = &f.Insert.Shell
		}
		for _, l := range f.Left {
			o.Left = append(o.Left, leftOut(l))
		}
		for n, g := range f.Seals {
			o.Seals = append(o.Seals, sealOut{goesOut(f.Seals)[n], float64(g.Contact.SealMinMM), float64(g.Contact.SealMaxMM),
				string(g.Contact.SealStanding)})
		}
		if f.Larger != nil {
			o.Larger = &largerOut{f.Larger.ID, f.Larger.More}
		}
		out.Fits = append(out.Fits, o)
	}
	b, err := json.MarshalIndent(out, "", "  ")
	if err != nil {
		return nil, err
	}
	return append(b, '\n'), nil
}

// roleOut is what a cavity is wanted for: a wire, a drain or a spare.
func roleOut(r inserts.Role) string {
	switch r {
	case inserts.ForDrain:
		return "drain"
	case inserts.ForSpare:
		return "spare"
	}
	return "wire"
}

func kindsOut(all []inserts.Kind) []kindOut {
	out := make([]kindOut, len(all))
	for k, x := range all {
		out[k] = kindOut{Wire: x.Says, For: roleOut(x.For), Count: x.Count, OverMM: known(float64(x.OverMM))}
	}
	return out
}

func goesOut(all []inserts.Goes) []kindOut {
	out := make([]kindOut, len(all))
	for k, x := range all {
		out[k] = kindOut{x.Says, roleOut(x.For), x.Count, known(float64(x.OverMM)), x.Contact.Size}
	}
	return out
}

func known(v float64) *float64 {
	if v <= 0 {
		return nil
	}
	return &v
}
