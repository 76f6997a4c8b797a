package catalogue

import (
	"strings"
	"testing"
)

const goodStock = `[[stock]]
of       = "AS22759/32 22"
number   = "W22-xx"
supplier = "Somebody"
pack     = 100.0
[[stock]]
of       = "AS22759/32 22"
colour   = "9"
number   = "W22-09"
[[stock]]
of       = "size 20"
what     = "contact"
number   = "C20"
`

// A shop says what it orders things as: of entries that fit a row of the bill the one that says most counts, an entry of
// its second file stands in the place of the same one of the first, and no hash of figures hangs on them.
func TestStock(t *testing.T) {
	c := mustRead(t, goodStock)
	for _, q := range []struct{ what, part, colour, want string }{
		{"wire", "AS22759/32 22", "9", "W22-09"}, {"wire", "AS22759/32 22", "2", "W22-xx"}, {"wire", "AS22759/32 22", "", "W22-xx"},
		{"contact", "size 20", "", "C20"}, {"seal plug", "size 20", "", ""}, {"wire", "AS22759/32 20", "9", ""},
	} {
		if s, ok := c.StockOf(q.what, q.part, q.colour); s.Number != q.want || ok != (q.want != "") {
			t.Errorf("%+v: %+v %v", q, s, ok)
		}
	}
	over := Merge(c, mustRead(t, "[[stock]]\nof = \"AS22759/32 22\"\ncolour = \"9\"\nnumber = \"NEW\"\n"))
	if s, _ := over.StockOf("wire", "AS22759/32 22", "9"); s.Number != "NEW" || len(over.Stock) != 3 || c.Stock[1].Number != "W22-09" {
		t.Errorf("%+v", over.Stock)
	}
	if c.Sum() != empty().Sum() {
		t.Error("the hash of figures hangs on what the shop orders things as")
	}
	for from, want := range map[string]string{
		`"W22-xx"`:              `stock number 1: number: it is empty`,
		`colour   = "9"` + "\n": `stock number 2: of: "AS22759/32 22" is in the file already; allowed: each stock once`,
		`100.0`:                 `stock number 1: pack: -1 is out of range; allowed: a number from 0.001 to 1000000`,
		`supplier =`:            `stock number 1: seller: unknown key`,
	} {
		to := map[string]string{`"W22-xx"`: `""`, `100.0`: `-1`, `supplier =`: `seller =`}[from]
		_, err := Read(strings.NewReader(strings.Replace(goodStock, from, to, 1)), "shop.toml")
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", from, err)
		}
	}
}
