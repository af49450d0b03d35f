#pragma once

#include "core/demo/demo.h"
#include "core/store/airframe_facts.h"
#include "tests/support/temp_store.h"

#include <gtest/gtest.h>
#include <map>
#include <memory>
#include <string>

namespace rig::test {

// The demonstration in a real file, built once for all tests of a suite: they only read it.
class DemoFile : public testing::Test
{
protected:
    static void SetUpTestSuite()
    {
        store = std::make_unique<TempStore>();
        store->clock().set(dayOf(2026, 11, 1));
        must(buildDemo(store->file(), demo::Language::English));
        for (const Airframe& airframe : must(store->records().airframes()))
            facts[airframe.registration] = must(factsOf(store->records(), airframe.id));
    }
    static void TearDownTestSuite()
    {
        facts.clear();
        store.reset();
    }

    static const AirframeFacts& of(const std::string& registration) { return facts.at(registration); }

    static inline std::unique_ptr<TempStore> store;
    static inline std::map<std::string, AirframeFacts> facts;
};

} // namespace rig::test
