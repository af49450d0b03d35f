#include "app/pages/statement_bench.h"

#include "app/pages/statement_form.h"
#include "app/widgets/flow_scroll.h"
#include "app/wording/problem_words.h"

#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

bool isTyped(const StatementEntry& entry)
{
    return !entry.said.trimmed().isEmpty() || !entry.done.trimmed().isEmpty();
}

} // namespace

StatementBench::StatementBench(Records& records, const Clock& clock, QWidget* parent)
    : QWidget{parent}, m_presenter{records, clock}
{
    setObjectName("statementBench");
    m_form = new StatementForm;
    m_scroll = new FlowScroll{m_form};
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_scroll);
    connect(m_form, &StatementForm::keepAsked, this, &StatementBench::keep);
    connect(m_form, &StatementForm::putAsideAsked, this, [this] {
        m_aside[m_key] = m_form->entry();
        m_isOpen = false;
        emit putAside();
    });
}

StatementBench::Key StatementBench::keyOf(const StatementEntry& entry)
{
    return {entry.kind, entry.airframe, entry.coupling, entry.reading};
}

bool StatementBench::readChoices()
{
    const auto choices = m_presenter.choices(std::get<AirframeId>(m_key));
    if (choices)
        m_form->setChoices(choices.value());
    else
        emit problemArose(ProblemWords::sentence(choices.problem(), {}));
    return static_cast<bool>(choices);
}

void StatementBench::open(const StatementEntry& entry, const QString& about)
{
    m_key = keyOf(entry);
    if (!readChoices())
        return;
    const auto aside = m_aside.find(m_key);
    m_form->setEntry(entry, about);
    if (aside != m_aside.end())
        m_form->setTyped(aside->second);
    m_isOpen = true;
    emit opened();
    m_scroll->scrollTo(0);
    m_form->focusFirst();
}

void StatementBench::catchUp()
{
    if (m_isOpen)
        readChoices();
}

void StatementBench::setLook(const Look& look)
{
    // As in Set up: a longer line is tiring to read.
    constexpr double kWidest = 960;
    m_form->setMaximumWidth(static_cast<int>(std::lround(kWidest * look.fonts.scale)));
}

bool StatementBench::hasTyped() const
{
    return (m_isOpen && isTyped(m_form->entry())) ||
           std::ranges::any_of(m_aside, [](const auto& one) { return isTyped(one.second); });
}

void StatementBench::keep()
{
    const auto done = m_presenter.keep(m_form->entry());
    if (!done) {
        emit problemArose(ProblemWords::sentence(done.problem(), {}));
        return;
    }
    m_form->showLacks(done.value().lacks);
    if (!done.value().isKept())
        return;
    m_aside.erase(m_key);
    m_isOpen = false;
    emit kept(done.value().sentence);
}

} // namespace rig
