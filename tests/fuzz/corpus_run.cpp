// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Runs one fuzz target without a fuzzer: every file of its corpus, then that many changed ones, drawn from a
// fixed seed so that each run is the same.
//
// fuzz_NAME CORPUS_FOLDER CHANGED

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

std::mt19937 random_bits(20260325);

std::size_t draw(std::size_t below) {
    return below == 0 ? 0 : random_bits() % below;
}

std::string changed(std::string text, const std::vector<std::string>& corpus) {
    for (std::size_t times = draw(4) + 1; times > 0; --times) {
        const auto at = draw(text.size() + 1);
        switch (draw(5)) {
            case 0:
                if (at < text.size()) text[at] = static_cast<char>(text[at] ^ (1 << draw(8)));
                break;
            case 1:
                text.insert(at, 1, "\0\xff{}[]\"/\\,:\r\n%=0-e"[draw(19)]);
                break;
            case 2:
                text.erase(at, draw(8) + 1);
                break;
            case 3:
                text.resize(at);
                break;
            default: {
                const auto& other = corpus[draw(corpus.size())];
                const auto from = draw(other.size() + 1);
                text.insert(at, other.substr(from, draw(64)));
            }
        }
    }
    return text;
}

void run(const std::string& text) {
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
}

}  // namespace

int main(int count, char** args) {
    if (count != 3) return 2;
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(args[1]))
        files.push_back(entry.path());
    std::ranges::sort(files);
    std::vector<std::string> corpus;
    for (const auto& file : files) {
        std::ifstream in(file, std::ios::binary);
        corpus.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    }
    if (corpus.empty()) {
        std::fprintf(stderr, "%s holds no files.\n", args[1]);
        return 1;
    }
    for (const auto& text : corpus)
        run(text);
    const int wanted = std::stoi(args[2]);
    for (int i = 0; i < wanted; ++i)
        run(changed(corpus[draw(corpus.size())], corpus));
    std::printf("%zu executions\n", corpus.size() + static_cast<std::size_t>(wanted));
    return 0;
}
