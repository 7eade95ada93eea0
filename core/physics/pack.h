// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>
#include <cstddef>

#if defined(__SSE2__)
#include <immintrin.h>
#elif defined(__ARM_NEON) && defined(__aarch64__)
#include <arm_neon.h>
#endif

/// Several doubles side by side in one register, and what the cranking kernel needs of them. A plain double
/// is a pack of one. Every operation is the IEEE one of a double, so that a case gives the same bits in any
/// lane of any pack.
namespace lapwing::physics {

// Not called from outside the kernel: always_inline keeps code made for a wider processor from serving as
// the shared copy of an inline function.
#define LAPWING_INLINE [[gnu::always_inline]] inline

template <std::size_t W>
struct Register;
template <>
struct Register<2> {
    typedef double Vector __attribute__((vector_size(16)));
};
template <>
struct Register<4> {
    typedef double Vector __attribute__((vector_size(32)));
};

template <std::size_t W>
struct Pack {
    using Vector = typename Register<W>::Vector;
    using Mask = decltype(Vector{} < Vector{});
    static constexpr std::size_t width = W;

    Vector v;

    Pack() = default;
    LAPWING_INLINE Pack(double all) : v(all - Vector{}) {}  // NOLINT: a number is a pack of equal numbers
    LAPWING_INLINE explicit Pack(Vector vector) : v(vector) {}

    LAPWING_INLINE friend Pack operator+(Pack a, Pack b) { return Pack(a.v + b.v); }
    LAPWING_INLINE friend Pack operator-(Pack a, Pack b) { return Pack(a.v - b.v); }
    LAPWING_INLINE friend Pack operator*(Pack a, Pack b) { return Pack(a.v * b.v); }
    LAPWING_INLINE friend Pack operator/(Pack a, Pack b) { return Pack(a.v / b.v); }
    LAPWING_INLINE friend Pack operator-(Pack a) { return Pack(-a.v); }
    LAPWING_INLINE friend Mask operator<(Pack a, Pack b) { return a.v < b.v; }
    LAPWING_INLINE friend Mask operator<=(Pack a, Pack b) { return a.v <= b.v; }
    LAPWING_INLINE friend Mask operator>(Pack a, Pack b) { return a.v > b.v; }
    LAPWING_INLINE friend Mask operator>=(Pack a, Pack b) { return a.v >= b.v; }
};

/// What a number type of the kernel is made of.
template <class R>
struct PackTraits {
    static constexpr std::size_t width = R::width;
    using Mask = typename R::Mask;
    LAPWING_INLINE static double lane(const R& of, std::size_t i) { return of.v[i]; }
    LAPWING_INLINE static void set_lane(R& of, std::size_t i, double value) { of.v[i] = value; }
    LAPWING_INLINE static bool mask_lane(const Mask& of, std::size_t i) { return of[i] != 0; }
    LAPWING_INLINE static Mask all() { return R(0.0) <= R(0.0); }
};
template <>
struct PackTraits<double> {
    static constexpr std::size_t width = 1;
    using Mask = bool;
    LAPWING_INLINE static double lane(double of, std::size_t) { return of; }
    LAPWING_INLINE static void set_lane(double& of, std::size_t, double value) { of = value; }
    LAPWING_INLINE static bool mask_lane(bool of, std::size_t) { return of; }
    LAPWING_INLINE static bool all() { return true; }
};

// Masks combine with &, | and ~ in packs; a bool's ~ is no bool, hence `other`.
LAPWING_INLINE bool any(bool mask) {
    return mask;
}
LAPWING_INLINE bool other(bool mask) {
    return !mask;
}
LAPWING_INLINE double select(bool mask, double yes, double no) {
    return mask ? yes : no;
}
LAPWING_INLINE double root(double a) {
    return std::sqrt(a);
}

template <std::size_t W>
LAPWING_INLINE Pack<W> select(typename Pack<W>::Mask mask, Pack<W> yes, Pack<W> no) {
    return Pack<W>(mask ? yes.v : no.v);
}

#if defined(__SSE2__)
LAPWING_INLINE bool any(Pack<2>::Mask mask) {
    return _mm_movemask_pd((__m128d)mask) != 0;
}
LAPWING_INLINE Pack<2> root(Pack<2> a) {
    return Pack<2>(_mm_sqrt_pd(a.v));
}
#else
LAPWING_INLINE bool any(Pack<2>::Mask mask) {
    return (mask[0] | mask[1]) != 0;
}
LAPWING_INLINE Pack<2> root(Pack<2> a) {
#if defined(__ARM_NEON) && defined(__aarch64__)
    return Pack<2>(vsqrtq_f64(a.v));
#else
    return Pack<2>(Pack<2>::Vector{std::sqrt(a.v[0]), std::sqrt(a.v[1])});
#endif
}
#endif
LAPWING_INLINE Pack<2>::Mask other(Pack<2>::Mask mask) {
    return ~mask;
}
#if defined(__AVX2__) || defined(LAPWING_FOUR_LANES)
LAPWING_INLINE bool any(Pack<4>::Mask mask) {
    return _mm256_movemask_pd((__m256d)mask) != 0;
}
LAPWING_INLINE Pack<4>::Mask other(Pack<4>::Mask mask) {
    return ~mask;
}
LAPWING_INLINE Pack<4> root(Pack<4> a) {
    return Pack<4>(_mm256_sqrt_pd(a.v));
}
#endif

template <class R>
LAPWING_INLINE R smaller(R a, R b) {
    return select(a < b, a, b);
}
template <class R>
LAPWING_INLINE R larger(R a, R b) {
    return select(a > b, a, b);
}
template <class R>
LAPWING_INLINE R magnitude(R a) {
    return larger(a, -a);
}

}  // namespace lapwing::physics
