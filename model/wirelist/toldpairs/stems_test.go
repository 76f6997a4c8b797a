package toldpairs

import (
	"testing"

	"contralay/model/wirelist/draft"
)

// Two wires are a pair by what their names share where the sentence says so, and where they are just two.
func TestByStem(t *testing.T) {
	var items []*draft.Item
	for _, s := range []string{"Crank +", "Crank -", "CAN1 H", "CAN1 L", "Cam", "Knock_P", "Knock_N", "Tank +", "Tank +", "Tank -"} {
		it := &draft.Item{}
		it.Signal = s
		items = append(items, it)
	}
	for sentence, want := range map[string]string{
		"Crank pair twisted and screened, screen to the case": "Crank +Crank -", "CAN1 pair is twisted": "CAN1 HCAN1 L",
		"Knock pair: twist": "Knock_PKnock_N", "Crank pair not twisted": "", "Crank pair": "", "Cam pair twisted": "",
		"Tank pair twisted": "",
		"Crank twisted":     "", "": "",
	} {
		got := ""
		for _, it := range byStem(sentence, items) {
			got += it.Signal
		}
		if got != want {
			t.Errorf("%q: %q, want %q", sentence, got, want)
		}
	}
}
