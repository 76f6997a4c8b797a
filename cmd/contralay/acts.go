package main

import (
	"fmt"
	"strings"

	"contralay/calc"
	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// acts is what a correction changes on some sheets, a line a branch: its OD, and the sheath that it
// would be offered. What a file has given itself is not changed, but may no longer go on: that is said.
func acts(sheets []*sheet.Sheet, names []string, cat *catalogue.Catalogue, c catalogue.Correction) []string {
	by := catalogue.Merge(cat, &catalogue.Catalogue{Corrections: []catalogue.Correction{c}})
	var out []string
	for n, was := range sheets {
		is := calc.Build(was.H, by, was)
		for i := range was.Branches {
			a, b := &was.Branches[i], &is.Branches[i]
			var says []string
			if from, to := unit.MM.Diameter(a.OverMM), unit.MM.Diameter(b.OverMM); from != to {
				says = append(says, fmt.Sprintf("OD %s to %s mm", from, to))
			}
			switch {
			case a.Sheath.Part != b.Sheath.Part:
				says = append(says, fmt.Sprintf("its sheath changes from %s to %s", orNone(a.Sheath.Part), orNone(b.Sheath.Part)))
			case b.Sheath.Tube.Set && b.Sheath.Verdict.Stops() && !a.Sheath.Verdict.Stops():
				says = append(says, fmt.Sprintf("its sheath %s no longer fits", b.Sheath.Part))
			}
			if len(says) > 0 {
				out = append(out, fmt.Sprintf("%s %s: %s", called(names[n]), was.H.Branches[i].ID, strings.Join(says, ", ")))
			}
		}
	}
	return out
}

func orNone(part string) string {
	if part == "" {
		return "none"
	}
	return part
}

// actsSays is what acts says, in lines under a group.
func actsSays(lines []string, verb string) string {
	if len(lines) == 0 {
		return "  " + verb + " no branch of these files\n"
	}
	return "  " + verb + ":\n    " + strings.Join(lines, "\n    ") + "\n"
}

// withdraw takes a correction back, which stays in the file as history.
func withdraw(o options, cat *catalogue.Catalogue, sheets []*sheet.Sheet, names []string, w world) (string, error) {
	if _, in := cat.Correction(o.withdraw); !in {
		var of []string
		for _, c := range cat.Corrections {
			if _, in := cat.Correction(c.Of); in && !strings.Contains("; "+strings.Join(of, "; ")+";", "; "+c.Of+";") {
				of = append(of, c.Of)
			}
		}
		if len(of) == 0 {
			return "", fmt.Errorf("%q is not corrected, and nothing is. Nothing was written", o.withdraw)
		}
		return "", fmt.Errorf("%q is not corrected, so nothing was written. In use are %s", o.withdraw, strings.Join(of, "; "))
	}
	c := catalogue.Correction{Of: o.withdraw, On: w.now().Format("2006-01-02"), Withdrawn: true}
	says := ""
	if len(sheets) > 0 {
		says = actsSays(acts(sheets, names, cat, c), "it changes")
	}
	name, err := correctionsFile(o, w)
	if err != nil {
		return "", err
	}
	if err := appendCorrections(name, c.Text()); err != nil {
		return "", err
	}
	return fmt.Sprintf("%s is no longer corrected. That was written to %s\n%s", o.withdraw, shown(name), says), nil
}
