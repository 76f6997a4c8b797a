package runs

import (
	"fmt"
	"slices"

	"contralay/calc/phase/built"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/ui/bench/board/runs/cards"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
)

// RunRow opens the run of a serial.
func RunRow(m *desk.Model) desk.Row {
	serial := openSerial(m)
	b := model.Build{}
	if k := m.H.BuildOf(serial); k >= 0 {
		b = m.H.Builds[k]
	}
	text := "bench run of serial " + serial + ": start it"
	if n := stepsDone(run.For(m.Sheet, &b), &b); n > 0 {
		text = fmt.Sprintf("bench run of serial %s: continue, %s done", serial, words.Plural(n, "step", "steps"))
		if c := built.Since(m.Sheet, &b); c.Again > 0 {
			text += fmt.Sprintf(", %d to do again", c.Again)
		}
	}
	return desk.Row{Key: "run", Text: text, Detail: "Enter shows one instruction a screen to tick off. Digits: another serial",
		Enter: func(m *desk.Model) { startRun(m, serial) },
		Field: &desk.Field{Label: "serial to build", Value: serial, ID: true, Set: func(m *desk.Model, text string) error {
			if text == "" {
				return fmt.Errorf("type a serial: digits, or any text")
			}
			startRun(m, text)
			return nil
		}}}
}

// stepsDone is how many of the steps a build has done.
func stepsDone(steps []run.RunStep, b *model.Build) int {
	n := 0
	for _, s := range steps {
		if s.In(b) {
			n++
		}
	}
	return n
}

// layingNow reports whether the step in hand lays or shrinks a branch, whose figures then
// stand below.
func layingNow(m *desk.Model) bool {
	r := state(m)
	steps := runSteps(m)
	return r.at < len(steps) &&
		(steps[r.at].Kind == run.LayStep || steps[r.at].Kind == run.BuildUpStep || steps[r.at].Put.What == sheet.PartSheath)
}

// Strip is how far the run is, but where a branch is laid or shrunk, whose figures stand there.
func Strip(m *desk.Model) (string, bool) {
	if layingNow(m) {
		return "", false
	}
	return fmt.Sprintf("%d of %d steps done", stepsDone(runSteps(m), build(m)), len(runSteps(m))), true
}

// Head is the serial and which step of how many it is at. What is ticked is kept as it is ticked: no
// word says that it is not.
func Head(m *desk.Model, h *kit.Head) {
	r, n := state(m), len(runSteps(m))
	h.Branch, h.Ends, h.Length = fmt.Sprintf("%s  step %d of %d", headSerial(m), min(r.at+1, n), n), "", ""
	if m.Dirty() {
		h.State, h.Change = "kept", false
		if m.Journal.Trouble != "" {
			h.State, h.Change = "NOT KEPT, no journal", true
		}
	}
}

// leastRows is how many rows stand under a card of a list so high.
func leastRows(h int) int {
	if h < 8 {
		return 1
	}
	return min(4+max(0, h-16)/3, 8)
}

// RunPage is one thing to do.
func RunPage(m *desk.Model, w int, _ string) desk.Page {
	r := state(m)
	steps := runSteps(m)
	if m.H.BuildOf(r.serial) < 0 {
		return desk.Page{Empty: "serial " + r.serial + " is gone. Esc goes back"}
	}
	r.at = min(r.at, len(steps))
	if r.at == len(steps) {
		return runOver(m, w)
	}
	s, b := steps[r.at], build(m)
	r.piece = min(r.piece, lastPiece(m, s))
	c := cards.Of(inHand(m, s), s, r.piece)
	p, is := pieceOf(m, s, r.piece)
	switch {
	case s.In(b) && toRedo(m, s):
		c.Title += "   DONE BEFORE THE SHEET CHANGED"
	case s.In(b), is && s.Has(b, p):
		c.Title += "   DONE" + doneBy(m, s, b)
	}
	h := m.ListHeight()
	c, pages := c.Paged(m.Theme, w-1, h-leastRows(h), r.page)
	r.page = min(r.page, pages-1)
	return desk.Page{Drawn: c.Draw(m.Theme, w-1, h-leastRows(h)), Rows: runRows(m, s, b, pages)}
}

// inHand is what the card of a step is made from.
func inHand(m *desk.Model, s run.RunStep) cards.Hand {
	p, _ := pieceOf(m, s, state(m).piece)
	return cards.Hand{Model: m, Begun: begun(m), Build: build(m), Serials: lacking(m, s, p), Pieces: piecesOf(m, s),
		Explained: func(s run.RunStep) (run.Explained, bool) {
			return explained(m, s, build(m).ReadingOf(s.Of, s.Layer))
		}}
}

// doneBy names who has done a step, where that is somebody else than who works here.
func doneBy(m *desk.Model, s run.RunStep, b *model.Build) string {
	marks := s.Marks()
	t := b.TickOf(marks[min(state(m).piece, len(marks)-1)])
	if t == nil || t.By.V == "" || t.By.V == state(m).who {
		return ""
	}
	return " by " + named(m, t.By.V)
}

// toRedo reports whether a step that is done differs from the sheet, or goes over one that does.
func toRedo(m *desk.Model, s run.RunStep) bool {
	for _, d := range since(m).Differences {
		if slices.ContainsFunc(s.Marks(), func(mark string) bool { return slices.Contains(d.Again, mark) }) {
			return true
		}
	}
	return false
}

// runOver is the end of a run: what it came to, and every open point.
func runOver(m *desk.Model, w int) desk.Page {
	b, open := build(m), openRows(m, w)
	n := len(openPoints(m))
	steps := runSteps(m)
	head, large := "every step is done", "done"
	if left := len(steps) - stepsDone(steps, b); left > 0 {
		head, large = words.Plural(left, "step is", "steps are")+" not done", "not done"
	} else if n := len(outOfLimits(m)); n > 0 {
		head, large = words.Plural(n, "reading is", "readings are")+" out of limits, and nobody has decided", "not done"
	}
	p := desk.Page{Lines: []string{fmt.Sprintf("serial %s   %s", b.Serial, head)}}
	if m.ListHeight() < 8 { // one line, and the rows
		p.Lines[0] = fmt.Sprintf("serial %s %s, %d open", b.Serial, large, n)
	}
	if m.ListHeight() >= 16+len(open) {
		p.Lines = append(append(append(p.Lines, ""), words.Letters(large, w, m.Cfg.ASCII)...), "")
	}
	p.Lines = append(p.Lines, fmt.Sprintf("%s, %s, %s. %s", words.Plural(len(b.Readings), "layer measured", "layers measured"),
		words.Plural(len(b.Signed), "hold signed", "holds signed"), words.Plural(len(b.Apart), "deviation", "deviations"),
		words.Plural(n, "open point:", "open points:")))
	p.Rows = []desk.Row{{Key: "save", Text: "save it", Detail: "Enter saves. The sheet then shows what was built",
		Enter: func(m *desk.Model) { m.Save() }}}
	p.Rows = append(append(p.Rows, otherRows(m)...), append(open, noteRow(m, b), leaveRow(m))...)
	return p
}
