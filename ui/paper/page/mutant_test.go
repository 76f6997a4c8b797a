package page

import (
	"fmt"
	"strings"
	"testing"
)

// Columns side by side: each as wide as it is, the gutter before each but the first, the whole closed as it was opened, and as
// high as its highest.
func TestBesideByHand(t *testing.T) {
	one, two := Block{HTML: "<i>one</i>", High: 10}, Block{HTML: "<i>two</i>", High: 25}
	b := Beside(7, Column{Wide: 40, Blocks: []Block{one}}, Column{Wide: 50, Blocks: []Block{two}})
	text := string(b.HTML)
	want := fmt.Sprintf(`<div class="beside"><div style="width:%s;margin-left:%s">`, mm(40), mm(0))
	if !strings.HasPrefix(text, want) || !strings.Contains(text, fmt.Sprintf(`<div style="width:%s;margin-left:%s">`, mm(50), mm(7))) ||
		b.High != 25 {
		t.Errorf("%v high: %s", b.High, text)
	}
	if open, shut := strings.Count(text, "<div"), strings.Count(text, "</div>"); open != shut || open < 3 {
		t.Errorf("%d opened, %d closed: %s", open, shut, text)
	}
	if strings.Index(text, "one") > strings.Index(text, "two") {
		t.Error("in another order")
	}
}
