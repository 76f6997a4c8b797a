package which

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/inserts"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Memory stands behind a figure that is from memory; FromMemory says what it means.
const (
	Memory     = "~"
	FromMemory = "~ from memory: check the part's sheet"
)

// Counted is so many of one: "32 x 22 AWG", "3 drains of 24 AWG", "1 spare of 22 AWG".
func Counted(k inserts.Kind) string {
	what := ""
	switch k.For {
	case inserts.ForWire:
		return fmt.Sprintf("%d x %s", k.Count, k.Says)
	case inserts.ForDrain:
		what = "drain"
	case inserts.ForSpare:
		what = "spare"
	}
	if k.Count != 1 {
		what += "s"
	}
	return fmt.Sprintf("%d %s of %s", k.Count, what, k.Says)
}

// Kinds is so many of each: "32 x 22 AWG, 2 x 2.9 mm".
func Kinds(all []inserts.Kind) string {
	out := make([]string, len(all))
	for k, x := range all {
		out[k] = Counted(x)
	}
	return strings.Join(out, ", ")
}

// Left is what an arrangement leaves free by contact size: "5 of 22D, 2 of 12"; "none" where it is full.
func Left(f inserts.Fit) string {
	var out []string
	for _, l := range f.Left {
		if l.Count > 0 {
			out = append(out, fmt.Sprintf("%d of %s", l.Count, l.Size))
		}
	}
	if len(out) == 0 {
		return "none"
	}
	return strings.Join(out, ", ")
}

// Goes is which wires go to which contact size.
func Goes(f inserts.Fit) string {
	var out []string
	for _, g := range f.Goes {
		out = append(out, Counted(g.Kind)+" in "+g.Contact.Size)
	}
	return strings.Join(out, ", ")
}

// Larger is what the next larger shell buys; "" where there is none.
func Larger(f inserts.Fit) string {
	if f.Larger == nil {
		return ""
	}
	return fmt.Sprintf("%s leaves %d more", f.Larger.ID, f.Larger.More)
}

// Seals are the seals that do not suit their wire.
func Seals(f inserts.Fit) []string {
	var out []string
	for _, g := range f.Seals {
		out = append(out, fmt.Sprintf("%s, %s mm: outside the seal of size %s, %s", Counted(g.Kind), unit.Fixed(g.OverMM, 2),
			g.Contact.Size, sealText(g.Contact)))
	}
	return out
}

func sealText(k catalogue.Contact) string {
	mark := ""
	if k.SealStanding == catalogue.Memory || k.SealStanding == "" {
		mark = Memory
	}
	return fmt.Sprintf("%s to %s mm%s", unit.Fixed(k.SealMinMM, 2), unit.Fixed(k.SealMaxMM, 2), mark)
}

// Said is what must be said of the answer as a whole: what was not judged, and where nothing takes it,
// why.
func Said(a inserts.Answer) []string {
	var out []string
	for _, k := range a.Kinds {
		says := ""
		switch {
		case k.ByOver:
			says = fmt.Sprintf("The gauge of %s is not given: only the seal is judged.", k.Says)
		case k.Unread:
			says = fmt.Sprintf("%s is in no catalogue: whether a contact takes it is not judged.", k.Says)
		}
		if says != "" && !slices.Contains(out, says) {
			out = append(out, says)
		}
	}
	for _, r := range a.None {
		why := "no seal takes it"
		switch {
		case r.Thick:
			why = "it is too thick for every barrel"
		case r.Thin:
			why = "it is too thin for every barrel"
		case r.OverMM == 0 && r.ByOver:
			why = "neither its gauge nor its diameter is known"
		}
		out = append(out, fmt.Sprintf("No contact takes %s: %s.", r.Says, why))
	}
	if n := a.Nearest; n != nil {
		out = append(out, fmt.Sprintf("No arrangement takes all of it. Nearest is %s: it has no place for %s.", n.Insert.ID,
			Kinds(n.Lacks)))
	} else if len(a.Fits) == 0 && len(a.None) == 0 {
		out = append(out, "No arrangement takes it.")
	}
	return out
}

// NotJudged names the arrangements with contacts that no catalogue has; "" where there are none.
func NotJudged(a inserts.Answer) string {
	if len(a.NotJudged) == 0 {
		return ""
	}
	return fmt.Sprintf("Not judged: %s. Their contacts %s are in no catalogue.", strings.Join(a.NotJudged, ", "),
		strings.Join(a.Contacts, ", "))
}

// Unseen says of which contacts no seal is known, over the fits that are shown; "" where all are.
func Unseen(fits []inserts.Fit) string {
	var sizes []string
	seen := map[string]bool{}
	for _, f := range fits {
		for _, g := range f.Unseen {
			if !seen[g.Contact.Size] {
				seen[g.Contact.Size] = true
				sizes = append(sizes, g.Contact.Size)
			}
		}
	}
	if len(sizes) == 0 {
		return ""
	}
	return "The seal of size " + strings.Join(sizes, ", ") + " is not known: whether it suits the wire is not judged."
}

// Names is an arrangement by all its names: "14-35 (15-35)".
func Names(i catalogue.Insert) string {
	if len(i.Aliases) == 0 {
		return i.ID
	}
	return i.ID + " (" + strings.Join(i.Aliases, ", ") + ")"
}
