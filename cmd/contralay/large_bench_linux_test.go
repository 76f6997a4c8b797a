package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"contralay/model/wirelist/listtest"
)

// What the whole program takes for a list of 20,000 rows, the file saved: the time by the clock and that of the processor, its own and
// the system's, and the memory at its peak, the most of all runs. A second and 256 MB are what each may take on a quiet machine. One run
// of all:
//
//	go test ./cmd/contralay -run '^$' -bench Lists20000 -benchtime 3x
func BenchmarkLists20000(b *testing.B) {
	for _, list := range listtest.LargeLists(20_000) {
		for _, file := range list.Files(b) {
			b.Run(strings.ReplaceAll(list.Shape, " ", "-")+"/"+file.Name, func(b *testing.B) {
				dir := b.TempDir()
				from, to := filepath.Join(dir, file.Name), filepath.Join(dir, "list.toml")
				if err := os.WriteFile(from, file.Data, 0o644); err != nil {
					b.Fatal(err)
				}
				sum, mb, clock := 0.0, 0, time.Duration(0)
				for b.Loop() {
					cmd := exec.Command(built, "import", from, "-o", to)
					cmd.Env = environ(b)
					began := time.Now()
					if err := cmd.Start(); err != nil {
						b.Fatal(err)
					}
					peak := make(chan int)
					go func() { peak <- highWater(cmd.Process.Pid) }()
					err := cmd.Wait()
					clock += time.Since(began)
					mb = max(mb, <-peak>>10)
					if err != nil {
						b.Fatal(err)
					}
					sum += (cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()).Seconds()
					if err := os.Remove(to); err != nil {
						b.Fatal(err)
					}
				}
				b.ReportMetric(0, "ns/op")
				b.ReportMetric(float64(clock.Milliseconds())/float64(b.N), "clock-ms/op")
				b.ReportMetric(1000*sum/float64(b.N), "cpu-ms/op")
				b.ReportMetric(float64(mb), "peak-MB")
			})
		}
	}
}
