package bench_test

import (
	"testing"
	"time"

	"contralay/model/file"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// BenchmarkLarge is what a key that changes a wire of testdata/whole.toml takes without
// the terminal: the edit with its journal, and the frame.
func BenchmarkLarge(b *testing.B) {
	d := benchtest.Load(b, "whole.toml")
	cat := benchtest.Catalogue(b)
	j, err := file.OpenJournal(b.TempDir(), "", "")
	if err != nil {
		b.Fatal(err)
	}
	defer j.Close()
	keep := func(d file.Document, dirty bool) error {
		if dirty {
			return j.Keep(d, time.Unix(0, 0), "")
		}
		j.Clear()
		return nil
	}
	m := benchtest.Ready(bench.New(desk.Config{Doc: d, Path: "x", Cat: cat, Palette: draw.Palette{Colour: true, Dark: true}, Keep: keep}))
	benchtest.Size(m, 80, 24)
	benchtest.Update(m, benchtest.Message("enter"))
	benchtest.Update(m, benchtest.Message("down"))
	keys := []string{"+", "-"}
	n := 0
	b.Run("update", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			benchtest.Update(m, benchtest.Message(keys[n%2]))
			n++
		}
	})
	b.Run("view", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			_ = benchtest.View(m)
		}
	})
	b.Run("both", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			benchtest.Update(m, benchtest.Message(keys[n%2]))
			_ = benchtest.View(m)
			n++
		}
	})
}
