package pdf_test

import (
	"bytes"
	"math"
	"testing"

	reader "rsc.io/pdf"

	"contralay/ui/paper/pdf"
	"contralay/ui/paper/plot"
)

// Letters are as high as they are asked for: 5 mm are 14.17 points, as another reader of PDF finds them.
func TestLettersAreTrue(t *testing.T) {
	s := &plot.Sheet{Title: "x", Box: plot.Box{High: plot.Point{X: 200, Y: 100}}}
	s.Write(plot.TextLayer, plot.Point{X: 40, Y: 30}, 5, false, "abc")
	text, err := pdf.Bytes("x", []plot.Page{{Name: "one", Wide: 200, High: 100, Views: []plot.View{{Of: s, Window: s.Box}}}})
	if err != nil {
		t.Fatal(err)
	}
	r, err := reader.NewReader(bytes.NewReader(text), int64(len(text)))
	if err != nil {
		t.Fatal(err)
	}
	sizes := 0
	reader.Interpret(r.Page(1).V.Key("Contents"), func(stack *reader.Stack, op string) {
		args := make([]reader.Value, stack.Len())
		for k := len(args) - 1; k >= 0; k-- {
			args[k] = stack.Pop()
		}
		if op == "Tf" && len(args) == 2 {
			if got := mm(args[1].Float64()); math.Abs(got-5) < 0.01 {
				sizes++
			} else {
				t.Logf("letters of %.3f mm", got)
			}
		}
	})
	if sizes == 0 {
		t.Error("no letters of 5 mm")
	}
}

// What is turned for one text is turned back for the next: every q has its Q, and no Q comes before its q.
func TestTurnsAreTurnedBack(t *testing.T) {
	s := &plot.Sheet{Title: "x", Box: plot.Box{High: plot.Point{X: 200, Y: 100}}}
	s.Add(plot.Shape{Layer: plot.TextLayer, Text: "up", Size: 5, Turn: 90, Middle: plot.Point{X: 40, Y: 30}})
	s.Write(plot.TextLayer, plot.Point{X: 40, Y: 60}, 5, false, "along")
	text, err := pdf.Bytes("x", []plot.Page{{Name: "one", Wide: 200, High: 100, Views: []plot.View{{Of: s, Window: s.Box}}}})
	if err != nil {
		t.Fatal(err)
	}
	r, err := reader.NewReader(bytes.NewReader(text), int64(len(text)))
	if err != nil {
		t.Fatal(err)
	}
	deep, turned := 0, false
	reader.Interpret(r.Page(1).V.Key("Contents"), func(stack *reader.Stack, op string) {
		for stack.Len() > 0 {
			stack.Pop()
		}
		switch op {
		case "q":
			deep++
		case "Q":
			if deep--; deep < 0 {
				t.Error("a Q without its q")
			}
		case "cm":
			turned = true
		}
	})
	if deep != 0 || !turned {
		t.Errorf("%d q are left open, turned %v", deep, turned)
	}
}
