package customer_test

import (
	"fmt"
	"html"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/paper"
	"contralay/ui/paper/customer"
)

// shop is the program's catalogue with a shop's people and instruments.
func shop(t *testing.T) *catalogue.Catalogue {
	t.Helper()
	return catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{
		People: []catalogue.Person{{ID: "7", Name: "A. Builder"}, {ID: "14", Name: "B. Inspector", MayInspect: true}},
		Instruments: []catalogue.Instrument{{ID: "M1", What: "ohmmeter", Serial: "88", Due: "2026-12-31"},
			{ID: "M2", What: "insulation tester", Serial: "89", Due: "2026-12-31"}}})
}

// finished is a harness with a serial 1 built to its end: every step ticked by 7, every hold signed by 14, every
// test read a tenth of its limit, or twice it where that is the least, every layer read as the sheet has it. Then
// change has its record.
func finished(t *testing.T, name string, change func(*model.Build)) *sheet.Sheet {
	t.Helper()
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	cat := shop(t)
	h := d.Harness
	h.Builds = nil
	s := calc.Complete(&h, cat, nil)
	done := s.H.EditBuild("1", func(b *model.Build) {
		b.EachTest, b.Revision, b.Begun = model.Some(true), s.H.Head.Revision, model.Some("2026-05-11")
		b.MassG = model.Some[unit.Gram](260.5)
		for _, step := range run.For(s, b) {
			by := "7"
			if step.Kind == run.HoldStep {
				by = "14"
				b.Signed = append(b.Signed, model.Signature{Step: step.Key, By: by, At: model.Some("2026-05-12 10:00")})
			}
			for _, tick := range step.Ticks(nil, "2026-05-12 09:00", by) {
				b.Tick(tick)
			}
			if step.Kind == run.LotStep {
				b.Lots = append(b.Lots, model.Lot{Of: step.Of, Lot: "R-7"})
			}
			for _, p := range run.Pieces(s, step) {
				if c := p.Check; c.Kind != run.NoCheck {
					b.Tests = append(b.Tests, made(c, step.Key))
				}
			}
			read(s, b, step)
		}
		if change != nil {
			change(b)
		}
	})
	return calc.Complete(done, cat, nil)
}

// made is a test that passed.
func made(c run.Check, step string) model.Test {
	v := model.Opt[float64]{}
	if c.Limit > 0 {
		v = model.Some(c.Limit / 10)
		if c.AtLeast() {
			v = model.Some(math.Round(c.Limit * 2))
		}
	}
	x := c.Record(step, v, "")
	x.Instrument, x.At, x.By = model.Some("M1"), model.Some("2026-05-12 09:30"), model.Some("7")
	if c.Kind == run.Isolated {
		x.Instrument = model.Some("M2")
	}
	return x
}

func read(s *sheet.Sheet, b *model.Build, step run.RunStep) {
	i, ok := s.Index.Branch[step.Of]
	if !ok || step.Kind != run.LayStep || step.Bare {
		return
	}
	b.Readings = append(b.Readings, model.Reading{Branch: step.Of, Layer: step.Layer,
		OverMM: []unit.Millimetre{s.Branches[i].Layers[step.Layer].OverMM}})
}

// handed is the set for a serial, and whether it is certified.
func handed(t *testing.T, s *sheet.Sheet, serial string) (paper.Sheet, bool) {
	t.Helper()
	out, conforms, err := paper.Customer(s, paper.Meta{On: "2026-05-13", Serial: serial, File: "x.toml"})
	if err != nil {
		t.Fatal(err)
	}
	if len(out.Pages.Squeezed) > 0 {
		t.Errorf("made smaller: %v", out.Pages.Squeezed)
	}
	if to := os.Getenv("SET_TO"); to != "" {
		_ = os.WriteFile(filepath.Join(to, strings.ReplaceAll(t.Name(), "/", "-")+".html"), out.HTML, 0o644)
	}
	return out, conforms
}

var tag = regexp.MustCompile(`<[^>]*>`)

// words is HTML without its tags.
func words(text string) string {
	_, body, _ := strings.Cut(text, "</style>")
	if body == "" {
		body = text
	}
	return strings.Join(strings.Fields(html.UnescapeString(tag.ReplaceAllString(body, " "))), " ")
}

// The demonstration built to its end is four pages.
func TestPages(t *testing.T) {
	out, conforms := handed(t, finished(t, "../../../testdata/demo.toml", nil), "1")
	for _, p := range out.Pages.Pages {
		t.Logf("%s: %.0f mm", p.Name, float64(p.Used))
	}
	if n := len(out.Pages.Pages); n > 4 || !conforms {
		t.Errorf("%d pages, certified %v: %s", n, conforms, words(string(out.Pages.Pages[0].HTML))[:400])
	}
	_ = fmt.Sprint
	_ = customer.CertificateName
}
