package paper

import (
	"fmt"
	"strings"

	"contralay/calc/formula/learn"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// What a shop learns, in words.

// percent is a share with its sign.
func percent(v float64) string {
	t := unit.Fixed(100*v, 1) + " %"
	if v > 0 {
		t = "+" + t
	}
	return t
}

// Lesson is what the readings of one group teach, in lines.
func Lesson(l learn.Lesson) []string {
	head := fmt.Sprintf("%s: %d readings", l.Group, l.N)
	switch {
	case l.N == 0:
		return []string{head + ", none that counts"}
	case !l.Bounded:
		head += fmt.Sprintf(", measured %s of the prediction", percent(l.Bias))
	default:
		head += fmt.Sprintf(", measured %s of the prediction (%s to %s at %s %%), spread %s %%", percent(l.Bias), percent(l.Low),
			percent(l.High), unit.Fixed(100*l.Confidence, 0), unit.Fixed(100*l.Spread, 1))
	}
	out := []string{head}
	switch {
	case !l.Enough:
		out = append(out, fmt.Sprintf("  too few: %d at least; nothing is corrected", l.Least))
	case !l.Matters:
		out = append(out, "  no bias that stands out from the spread: accepting it corrects the band alone")
	default:
		out = append(out, "  enough to correct by")
	}
	for _, o := range l.Outliers {
		out = append(out, fmt.Sprintf("  odd one out: %s, %s of the prediction; look at it before you accept, or leave it out by its name",
			o.Of, percent(o.Ratio-1)))
	}
	for _, o := range l.LeftOut {
		out = append(out, fmt.Sprintf("  left out: %s, %s of the prediction", o.Of, percent(o.Ratio-1)))
	}
	if l.Skipped > 0 {
		out = append(out, fmt.Sprintf("  %d skipped: no two sizes above zero", l.Skipped))
	}
	return out
}

// Accepted is a lesson as the correction that a shop accepts; ok is false where there are
// too few readings. Without a bias that matters the spread alone is kept.
func Accepted(l learn.Lesson, on, from string) (catalogue.Correction, bool) {
	bias, spread, corrects := learn.Correction(l)
	if !corrects && !l.Enough {
		return catalogue.Correction{}, false
	}
	return catalogue.Correction{Of: l.Group, Bias: unit.Ratio(bias), Spread: unit.Ratio(spread), Low: unit.Ratio(l.Low),
		High: unit.Ratio(l.High), Readings: l.N, On: on, From: from}, true
}

// InUse is a correction in one line, its history after it.
func InUse(c *catalogue.Catalogue, of string) string {
	var was []string
	for _, x := range c.Corrections {
		if x.Of == of {
			says := percent(float64(x.Bias)) + " of " + fmt.Sprint(x.Readings)
			if x.Withdrawn {
				says = "withdrawn"
			}
			was = append(was, strings.TrimSpace(says+" "+x.On))
		}
	}
	x, ok := c.Correction(of)
	if !ok {
		return of + ": not corrected; " + strings.Join(was, ", then ")
	}
	return fmt.Sprintf("%s: %s, spread %s %%, %d readings; accepted: %s", of, percent(float64(x.Bias)),
		unit.Fixed(100*x.Spread, 1), x.Readings, strings.Join(was, ", then "))
}
