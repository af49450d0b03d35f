#pragma once

#include "app/pages/day_edit.h"
#include "app/pages/setup/form.h"
#include "app/wording/setup_words.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalBlocker>

#include <functional>
#include <map>
#include <utility>

namespace rig {

// A form of which each field stands for a member of `Entry`: it is filled from one and read into one. It
// knows what it was opened for, so that what is saved belongs to that, whatever the list shows by then.
template <typename Entry> class EntryForm : public Form
{
public:
    using Form::Form;

    QLineEdit* line(const FieldText& text, QString Entry::*member, Width width = Width::Half)
    {
        QLineEdit* line = addLine(text, width);
        bind([=](Entry& entry) { entry.*member = line->text(); },
             [=](const Entry& entry) { line->setText(entry.*member); });
        return line;
    }

    QPlainTextEdit* text(const FieldText& text, QString Entry::*member)
    {
        QPlainTextEdit* edit = addText(text);
        bind([=](Entry& entry) { entry.*member = edit->toPlainText(); },
             [=](const Entry& entry) {
                 const QSignalBlocker quiet{edit};
                 edit->setPlainText(entry.*member);
             });
        return edit;
    }

    DayEdit* day(const FieldText& text, QString Entry::*member, Width width = Width::Half)
    {
        DayEdit* day = addDay(text, width);
        bind([=](Entry& entry) { entry.*member = day->text(); },
             [=](const Entry& entry) { day->setText(entry.*member); });
        return day;
    }

    // The choices stand in the order of the enum up to `last`, so that the index is the kind.
    template <typename Kind, typename NameOf>
    QComboBox* choice(const FieldText& text, Kind Entry::*member, Kind last, NameOf nameOf)
    {
        QComboBox* box = addChoice(text);
        for (int i = 0; i <= static_cast<int>(last); ++i)
            box->addItem(nameOf(static_cast<Kind>(i)));
        bind([=](Entry& entry) { entry.*member = static_cast<Kind>(box->currentIndex()); },
             [=](const Entry& entry) { box->setCurrentIndex(static_cast<int>(entry.*member)); });
        return box;
    }

    void bind(std::function<void(Entry&)> read, std::function<void(const Entry&)> fill)
    {
        m_fields.push_back({std::move(read), std::move(fill)});
    }

    Entry entry() const
    {
        Entry entry;
        for (const auto& [read, fill] : m_fields)
            read(entry);
        return entry;
    }

    // `of` is what it changes; empty: something new. `typed` stands in place of what is saved.
    void open(std::optional<IdBytes> of, const Entry& saved, const std::optional<Entry>& typed = {})
    {
        m_of = of;
        m_saved = saved;
        for (const auto& [read, fill] : m_fields)
            fill(typed.value_or(saved));
        showProblems({});
        showStatus(hasUnsaved() ? SetUpWords::notSavedYet() : QString{});
    }

    template <typename ThingId> std::optional<ThingId> of() const
    {
        return m_of ? std::optional{ThingId{*m_of}} : std::nullopt;
    }

    // What stands here is in the file now.
    void takeAsSaved() { m_saved = entry(); }

    bool hasUnsaved() const override { return entry() != m_saved; }

    void putAside(AirframeId airframe) override { m_aside[airframe] = {title(), m_of, m_saved, entry()}; }

    bool hasAside() const override { return !m_aside.empty(); }

    bool takeUp(AirframeId airframe) override
    {
        const auto aside = m_aside.extract(airframe);
        if (!aside)
            return false;
        setTitle(aside.mapped().title);
        open(aside.mapped().of, aside.mapped().saved, aside.mapped().typed);
        return true;
    }

private:
    struct Aside
    {
        QString title;
        std::optional<IdBytes> of;
        Entry saved;
        Entry typed;
    };

    std::vector<std::pair<std::function<void(Entry&)>, std::function<void(const Entry&)>>> m_fields;
    std::optional<IdBytes> m_of;
    Entry m_saved;
    std::map<AirframeId, Aside> m_aside;
};

} // namespace rig
