//go:build !linux

package main

// largePages does nothing where no system is known to be asked for them.
func largePages(int) {}
