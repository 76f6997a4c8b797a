package say

import (
	"fmt"
	"strings"

	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Passes is a test that has passed, as a row says it.
func Passes(c run.Check) string {
	switch c.Kind {
	case run.Rings:
		return c.From + " rings to " + c.To
	case run.Silent:
		return c.From + " rings to nothing"
	case run.Pulled:
		return fmt.Sprintf("sample %d held", c.Sample)
	case run.Isolated:
		return "isolation of " + c.From
	}
	return "drop of " + c.Name
}

// Limit is what a test must read.
func Limit(c run.Check) string {
	if c.Limit <= 0 {
		return "no limit is known: see its maker's sheet"
	}
	says := fmt.Sprintf("%s %s %s", words.Either(c.AtLeast(), "at least", "at most"), figure(c.Limit), c.Unit())
	if c.Expect > 0 {
		says += fmt.Sprintf(", the sheet has %s", figure(c.Expect))
	}
	return says
}

// figure is a reading or a limit: three decimals below 10, one below 100.
func figure(v float64) string {
	switch {
	case v < 10:
		return unit.Fixed(v, 3)
	case v < 100:
		return unit.Fixed(v, 1)
	}
	return unit.Fixed(v, 0)
}

// Result is what the last test of it came to; "" where none was made.
func Result(c run.Check, result run.Result, t model.Test) string {
	read := Read(c, t)
	switch result {
	case run.Failed:
		return "OUT OF LIMITS: " + read + ". Mend it and test again"
	case run.Conceded:
		return "out of limits, and kept: " + read
	case run.Passed:
		if read == "" {
			return "passed"
		}
		return "passed: " + read
	}
	return ""
}

// Read is what a test read, or the fault it found; "" where it passed without a number.
func Read(c run.Check, t model.Test) string {
	if t.Fault.Set {
		return t.Fault.V
	}
	for _, o := range []model.Opt[float64]{t.Ohm, t.Megohm, t.Volt, t.Newton} {
		if o.Set {
			return fmt.Sprintf("read %s %s", figure(o.V), c.Unit())
		}
	}
	return ""
}

// Instrument is an instrument with the day its calibration ends, and whether that is past.
func Instrument(m *desk.Model, id string) string {
	i, known := m.Cfg.Cat.Instrument(id)
	if !known {
		return id
	}
	says := strings.TrimSpace(i.ID + " " + i.What + " " + i.Serial)
	if i.Due != "" {
		says += ", due " + i.Due
		if m.Cfg.Now != nil && m.Cfg.Now().Format("2006-01-02") > i.Due {
			says += ": OVERDUE"
		}
	}
	return says
}
