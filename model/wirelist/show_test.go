package wirelist_test

import (
	"fmt"
	"os"
	"testing"

	"contralay/model/file"
	"contralay/model/wirelist"
)

func TestShow(t *testing.T) {
	for _, n := range []string{"pin-table.md", "from-to.csv", "from-to-semicolon.csv"} {
		data, _ := os.ReadFile("/work/shared/lists/" + n)
		tt, err := wirelist.Read(n, data, wirelist.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		h, rep, err := wirelist.Import(tt, wirelist.Options{})
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range rep.Lines() {
			fmt.Println(l)
		}
		fmt.Println(h.Check())
		if os.Getenv("TOML") != "" {
			fmt.Println(string(file.Encode(file.Document{Harness: h})))
		}
	}
}

func TestWriteOut(t *testing.T) {
	dir := os.Getenv("OUT")
	if dir == "" {
		t.Skip()
	}
	for _, n := range []string{"pin-table.md", "from-to.csv", "from-to-semicolon.csv"} {
		data, _ := os.ReadFile("/work/shared/lists/" + n)
		tt, _ := wirelist.Read(n, data, wirelist.Limits{})
		h, _, _ := wirelist.Import(tt, wirelist.Options{})
		os.WriteFile(dir+"/"+n+".toml", file.Encode(file.Document{Harness: h}), 0o644)
	}
}
