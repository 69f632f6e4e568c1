// Result<T>: a value, or an Error that says what went wrong, where, and what to do about it.
// Used at every edge (files, JSON, assets, typed text, display). Inside, assert and total
// functions.
#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>

namespace base {

// The one list of error kinds. Tests and callers compare kinds, people read the message.
enum class ErrorKind {
    not_found,
    cannot_read,
    cannot_write,
    not_json,
    too_deep,
    too_large,
    wrong_type,
    out_of_range,
    missing_field,
    duplicate,
    dangling_reference,
    wrong_format,
    newer_version,
    damaged_journal,
    changed_outside,
    locked,
    bad_text,
    no_display,
    not_possible,
};

// Where something is wrong. Empty or zero parts are unknown or do not apply.
struct Place {
    std::string file;
    int line = 0;        // from 1
    int column = 0;      // from 1, in bytes
    std::string pointer; // JSON pointer (RFC 6901)

    bool operator==(const Place&) const = default;
};

struct Error {
    ErrorKind kind = ErrorKind::not_possible;
    std::string message; // one sentence: what is wrong
    Place place{};
    std::string remedy{}; // one sentence: what to do now; may be empty

    bool operator==(const Error&) const = default;
};

// "FILE:LINE:COLUMN (POINTER): MESSAGE REMEDY", leaving out what is unknown.
std::string to_text(const Error& error);
std::string to_text(const Place& place);

// A success without a value, for Result<Nothing>.
struct Nothing {
    bool operator==(const Nothing&) const = default;
};

template <class T>
class [[nodiscard]] Result {
public:
    // Not explicit, so that a return statement reads as a sentence.
    // NOLINTNEXTLINE(google-explicit-constructor)
    Result(T value) : content_(std::in_place_index<0>, std::move(value)) {}

    // NOLINTNEXTLINE(google-explicit-constructor)
    Result(Error error) : content_(std::in_place_index<1>, std::move(error)) {}

    bool ok() const { return content_.index() == 0; }

    explicit operator bool() const { return ok(); }

    const T& value() const& {
        assert(ok() && "ask ok() before taking the value");
        return *std::get_if<0>(&content_);
    }

    T& value() & {
        assert(ok() && "ask ok() before taking the value");
        return *std::get_if<0>(&content_);
    }

    T&& value() && {
        assert(ok() && "ask ok() before taking the value");
        return std::move(*std::get_if<0>(&content_));
    }

    const Error& error() const {
        assert(!ok() && "a success has no error");
        return *std::get_if<1>(&content_);
    }

private:
    std::variant<T, Error> content_;
};

} // namespace base
