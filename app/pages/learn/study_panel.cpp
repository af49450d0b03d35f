#include "app/pages/learn/study_panel.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/wording/formats.h"
#include "app/wording/study_words.h"
#include "core/airframe/name_in.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QSpinBox>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

template <typename SomeId>
std::vector<SomeId> tickedOf(const std::vector<std::pair<SomeId, QCheckBox*>>& boxes)
{
    std::vector<SomeId> ticked;
    for (const auto& [id, box] : boxes)
        if (box->isChecked())
            ticked.push_back(id);
    return ticked;
}

QVBoxLayout* pageLayout(QWidget* page)
{
    auto* layout = new QVBoxLayout{page};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    return layout;
}

} // namespace

StudyPanel::StudyPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = pageLayout(this);
    layout->addWidget(labelOf(StudyWords::studyTitle(), "title"));
    m_stack = new QStackedWidget;
    m_stack->addWidget(makePlan());
    m_stack->addWidget(makeReading());
    m_stack->addWidget(makeResult());
    layout->addWidget(m_stack);
    layout->addStretch(1);
}

QWidget* StudyPanel::makePlan()
{
    auto* page = new QWidget;
    auto* layout = pageLayout(page);
    layout->addWidget(labelOf(StudyWords::studyWhat(), "body"));
    auto* columns = new QHBoxLayout;
    for (QVBoxLayout** boxes : {&m_couplingBoxes, &m_personBoxes}) {
        auto* column = new QVBoxLayout;
        column->addWidget(labelOf(
            boxes == &m_couplingBoxes ? StudyWords::whichCouplings() : StudyWords::whichPersons(), "label"));
        *boxes = new QVBoxLayout;
        column->addLayout(*boxes);
        column->addStretch(1);
        columns->addLayout(column, 1);
    }
    layout->addLayout(columns);
    QLabel* label = labelOf(StudyWords::repeatsEach(), "label");
    m_repeats = new QSpinBox;
    m_repeats->setObjectName("studyRepeats");
    m_repeats->setRange(2, 20);
    m_repeats->setValue(3);
    m_repeats->setAccessibleName(withoutMnemonic(StudyWords::repeatsEach()));
    label->setBuddy(m_repeats);
    layout->addWidget(label);
    layout->addWidget(m_repeats, 0, Qt::AlignLeft);
    m_wanted = labelOf({}, "soft", "studyWanted");
    layout->addWidget(m_wanted);
    m_begin = buttonOf(StudyWords::begin(), "beginStudy", "primary");
    layout->addWidget(m_begin, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(m_repeats, &QSpinBox::valueChanged, this, &StudyPanel::showWanted);
    connect(m_begin, &QPushButton::clicked, this, [this] {
        m_isPlanning = false;
        emit beginAsked(tickedCouplings(), tickedPersons(), m_repeats->value());
    });
    return page;
}

QWidget* StudyPanel::makeReading()
{
    auto* page = new QWidget;
    auto* layout = pageLayout(page);
    m_progress = labelOf({}, "label", "studyProgress");
    m_next = labelOf({}, "section", "studyNext");
    layout->addWidget(m_progress);
    layout->addWidget(m_next);
    layout->addWidget(labelOf(StudyWords::nextHint(), "body"));
    QLabel* label = labelOf(StudyWords::gauge(), "label");
    m_gauge = new ChoiceBox{withoutMnemonic(StudyWords::gauge())};
    m_gauge->setObjectName("studyGauge");
    label->setBuddy(m_gauge);
    layout->addWidget(label);
    layout->addWidget(m_gauge, 0, Qt::AlignLeft);
    m_leaves = new LeafRow;
    m_leaves->setObjectName("studyLeaves");
    layout->addWidget(m_leaves);
    m_refused = labelOf({}, "problem", "studyRefused");
    m_refused->hide();
    layout->addWidget(m_refused);
    layout->addStretch(1);
    connect(m_gauge, &QComboBox::activated, this, &StudyPanel::showLeaves);
    connect(m_leaves, &LeafRow::readingChosen, this, [this](const GaugeReading& reading) {
        if (const auto gauge = m_gauge->chosen<GaugeId>(); gauge && m_view.next)
            emit readingTaken(*m_view.next, *gauge, reading);
    });
    connect(m_leaves, &LeafRow::entryRefused, this,
            [this](const QString& sentence) { sayIn(m_refused, sentence); });
    return page;
}

QWidget* StudyPanel::makeResult()
{
    auto* page = new QWidget;
    auto* layout = pageLayout(page);
    layout->addWidget(labelOf(StudyWords::whole(), "label"));
    m_result = labelOf({}, "section", "studyResult");
    layout->addWidget(m_result);
    m_table = new QGridLayout;
    m_table->setHorizontalSpacing(24);
    layout->addLayout(m_table);
    m_meaning = labelOf(StudyWords::meaning(), "soft");
    layout->addWidget(m_meaning);
    auto* another = buttonOf(StudyWords::beginAnother(), "anotherStudy");
    layout->addWidget(another, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(another, &QPushButton::clicked, this, [this] {
        m_isPlanning = true;
        showPlan();
        if (!m_couplings.empty())
            m_couplings.front().second->setFocus();
    });
    return page;
}

void StudyPanel::setLook(const Look& look)
{
    m_leaves->setLook(look);
}

void StudyPanel::forget()
{
    m_isPlanning = false;
    m_view = {};
    m_gauge->setCurrentIndex(0);
    m_leaves->clearTyped();
}

void StudyPanel::display(const StudyView& view)
{
    m_view = view;
    if (view.next)
        return showReading();
    if (view.study && !m_isPlanning)
        return showResult();
    showPlan();
}

void StudyPanel::showPlan()
{
    const auto fill = [this](auto& boxes, QVBoxLayout* layout, const auto& things, const char* name) {
        const auto isSame =
            boxes.size() == things.size() && std::ranges::equal(
                                                 boxes, things, {}, [](const auto& one) { return one.first; },
                                                 [](const auto& one) { return one.id; });
        if (isSame)
            return;
        for (const auto& [id, box] : boxes)
            delete box;
        boxes.clear();
        for (const auto& thing : things) {
            auto* box = new QCheckBox{
                QString::fromStdString(thing.name).replace(QLatin1String{"&"}, QLatin1String{"&&"})};
            box->setObjectName(QLatin1String(name) + QString::number(boxes.size()));
            connect(box, &QCheckBox::toggled, this, &StudyPanel::showWanted);
            layout->addWidget(box);
            boxes.emplace_back(thing.id, box);
        }
    };
    fill(m_couplings, m_couplingBoxes, m_view.couplings, "studyCoupling");
    fill(m_persons, m_personBoxes, m_view.persons, "studyPerson");
    showWanted();
    m_stack->setCurrentIndex(0);
}

std::vector<CouplingId> StudyPanel::tickedCouplings() const
{
    return tickedOf(m_couplings);
}

std::vector<PersonId> StudyPanel::tickedPersons() const
{
    return tickedOf(m_persons);
}

void StudyPanel::showWanted()
{
    const int couplings = static_cast<int>(tickedCouplings().size());
    const int persons = static_cast<int>(tickedPersons().size());
    const bool isEnough = couplings >= 2 && persons >= 2;
    m_wanted->setText(isEnough ? StudyWords::wanted(couplings, persons, m_repeats->value())
                               : StudyWords::twoOfEach());
    m_begin->setEnabled(isEnough);
}

void StudyPanel::showReading()
{
    m_progress->setText(StudyWords::progress(m_view.result.read + 1, m_view.result.wanted));
    m_next->setText(
        StudyWords::next(QString::fromStdString(nameIn(m_view.persons, m_view.next->person)),
                         QString::fromStdString(nameIn(m_view.couplings, m_view.next->coupling))));
    const auto gauge = m_gauge->chosen<GaugeId>();
    m_gauge->fill(StudyWords::chooseGauge(), m_view.gauges);
    m_gauge->choose(gauge);
    sayIn(m_refused, {});
    showLeaves();
    m_stack->setCurrentIndex(1);
}

void StudyPanel::showLeaves()
{
    const auto chosen = m_gauge->chosen<GaugeId>();
    const auto gauge = chosen ? std::ranges::find(m_view.gauges, *chosen, &Gauge::id) : m_view.gauges.end();
    const bool isThere = gauge != m_view.gauges.end();
    m_leaves->setGauge(isThere ? gauge->set : GaugeSet{}, std::nullopt);
    m_leaves->setChosen(std::nullopt);
    m_leaves->setEnabled(isThere);
}

void StudyPanel::showResult()
{
    while (QLayoutItem* item = m_table->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const auto& study = m_view.result.figures.study;
    m_result->setText(study ? StudyWords::result(*study, study->persons.df + 1)
                            : StudyWords::noResult(m_view.result));
    m_meaning->setVisible(study.has_value());
    if (study) {
        int row = 0;
        const auto add = [&](const QString& what, const QString& figure, const char* kind) {
            m_table->addWidget(labelOf(what, kind), row, 0);
            m_table->addWidget(labelOf(figure, kind), row, 1);
            ++row;
        };
        const auto mm = [](double value) { return Formats{}.number(value, 3); };
        add(StudyWords::columnWhat(), StudyWords::columnMm(), "label");
        add(StudyWords::rowRepeat(), mm(study->repeatSd), "body");
        add(StudyWords::rowReproduced(), mm(study->reproducedSd), "body");
        add(StudyWords::rowPersons(), mm(std::sqrt(study->personVariance)), "body");
        add(StudyWords::rowInteraction(), mm(std::sqrt(study->interactionVariance)), "body");
        add(StudyWords::rowCouplings(), mm(std::sqrt(study->partVariance)), "body");
        add(StudyWords::rowRepeatLimit(), mm(study->repeatLimit), "body");
        add(StudyWords::rowReproducedLimit(), mm(study->reproducedLimit), "body");
        m_table->setColumnStretch(2, 1);
    }
    m_stack->setCurrentIndex(2);
}

bool StudyPanel::takeKey(QKeyEvent* event)
{
    return m_stack->currentIndex() == 1 && m_leaves->isEnabled() && m_leaves->takeKey(event);
}

} // namespace rig
