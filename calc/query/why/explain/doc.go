// Package explain answers how each figure of a finished sheet was made, and what would
// change it most. It joins what calc/query/why/shape and calc/query/why/power explain.
package explain
