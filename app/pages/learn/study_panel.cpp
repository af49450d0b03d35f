#include "app/pages/learn/study_panel.h"

#include "app/widgets/announcer.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/widgets/still_box.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/formats.h"
#include "app/wording/signing_words.h"
#include "app/wording/study_words.h"
#include "core/airframe/name_in.h"

#include <QCheckBox>
#include <QGridLayout>
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

// A name on a button: an ampersand in it underlines nothing.
QString withoutKey(QString name)
{
    return name.replace(QLatin1Char('&'), QLatin1String("&&"));
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
    m_stack->addWidget(makeLeft());
    m_takenBack = labelOf({}, "body", "studyTakenBack");
    m_takenBack->setTextFormat(Qt::RichText); // struck; the rest is escaped
    layout->addWidget(m_takenBack);
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
    m_repeats = new StillSpinBox;
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
        m_isPlanning = m_isLeft = false;
        emit beginAsked(tickedCouplings(), tickedPersons(), m_repeats->value());
    });
    return page;
}

QWidget* StudyPanel::makeReading()
{
    auto* page = new QWidget;
    auto* layout = pageLayout(page);
    m_kept = labelOf({}, "label", "studyKept");
    m_progress = labelOf({}, "label", "studyProgress");
    m_next = labelOf({}, "section", "studyNext");
    for (QWidget* one :
         std::initializer_list<QWidget*>{m_kept, m_progress, m_next, makeHandOver(), makeLeaves()})
        layout->addWidget(one);
    auto* buttons = new WrapLayout{10, false};
    auto* leave = buttonOf(StudyWords::leave(), "leaveStudy");
    buttons->addWidget(takeBackButton());
    buttons->addWidget(leave);
    layout->addLayout(buttons);
    layout->addStretch(1);
    connect(leave, &QPushButton::clicked, this, [this] {
        m_isLeft = true;
        m_begun.reset();
        showLeft();
        m_goOn->setFocus();
    });
    return page;
}

QWidget* StudyPanel::makeHandOver()
{
    m_handOver = new QWidget;
    auto* layout = pageLayout(m_handOver);
    m_handTo = labelOf({}, "body", "studyHandOver");
    m_iAm = buttonOf({}, "studyIAm", "primary");
    layout->addWidget(m_handTo);
    layout->addWidget(m_iAm, 0, Qt::AlignLeft);
    layout->addWidget(labelOf(StudyWords::handOverHint(), "soft"));
    connect(m_iAm, &QPushButton::clicked, this, &StudyPanel::begin);
    return m_handOver;
}

QWidget* StudyPanel::makeLeaves()
{
    m_reading = new QWidget;
    auto* layout = pageLayout(m_reading);
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
    connect(m_gauge, &QComboBox::activated, this, &StudyPanel::showLeaves);
    connect(m_leaves, &LeafRow::readingChosen, this, [this](const GaugeReading& reading) {
        const auto gauge = m_gauge->chosen<GaugeId>();
        if (!gauge || !isBegun())
            return;
        const StudyPlace place = *m_view.next; // another one stands there once this is kept
        m_begun.reset();
        emit readingTaken(place, *gauge, reading);
    });
    connect(m_leaves, &LeafRow::entryRefused, this, [this](const QString& sentence) {
        sayIn(m_refused, m_leaves->says(sentence) ? QString{} : sentence);
    });
    return m_reading;
}

QWidget* StudyPanel::makeLeft()
{
    auto* page = new QWidget;
    auto* layout = pageLayout(page);
    m_left = labelOf({}, "body", "studyLeft");
    m_goOn = buttonOf(StudyWords::goOn(), "goOnStudy", "primary");
    auto* another = buttonOf(StudyWords::beginAnother(), "insteadStudy");
    layout->addWidget(m_left);
    layout->addWidget(m_goOn, 0, Qt::AlignLeft);
    layout->addWidget(another, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(m_goOn, &QPushButton::clicked, this, [this] {
        m_isLeft = false;
        showReading();
    });
    connect(another, &QPushButton::clicked, this, &StudyPanel::plan);
    return page;
}

QPushButton* StudyPanel::takeBackButton()
{
    auto* button = buttonOf({}, "takeStudyBack");
    m_takeBack.push_back(button);
    connect(button, &QPushButton::clicked, this, &StudyPanel::takeBack);
    return button;
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
    layout->addWidget(takeBackButton(), 0, Qt::AlignLeft);
    layout->addWidget(another, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(another, &QPushButton::clicked, this, &StudyPanel::plan);
    return page;
}

void StudyPanel::plan()
{
    m_isPlanning = true;
    showPlan();
    if (!m_couplings.empty())
        m_couplings.front().second->setFocus();
}

void StudyPanel::setLook(const Look& look)
{
    m_leaves->setLook(look);
}

void StudyPanel::forget()
{
    m_isPlanning = m_isLeft = false;
    m_begun.reset();
    m_view = {};
    sayAloud(m_kept, {});
    m_gauge->setCurrentIndex(0);
    m_leaves->clearTyped();
}

void StudyPanel::display(const StudyView& view)
{
    if (view.result.read < m_view.result.read)
        sayAloud(m_kept, SigningWords::takenBackNow());
    m_view = view;
    showLast();
    if (m_isPlanning || !view.study)
        return showPlan();
    if (!view.next)
        return showResult();
    m_isLeft ? showLeft() : showReading();
}

// What was read is told to nobody before everything is read.
void StudyPanel::showLast()
{
    for (QPushButton* button : m_takeBack) {
        button->setVisible(m_view.last.has_value());
        if (m_view.last)
            button->setText(StudyWords::takeLastBack(withoutKey(nameOf(m_view.last->person)),
                                                     withoutKey(nameOf(m_view.last->coupling))));
    }
    QStringList rows;
    for (const auto& [reading, back] : m_view.takenBack) {
        const QString what = StudyWords::oneReading(nameOf(reading.coupling), nameOf(reading.person));
        rows << SigningWords::takenBack(QStringLiteral("<s>%1</s>").arg(what.toHtmlEscaped()),
                                        nameOf(back.person).toHtmlEscaped(),
                                        QString::fromStdString(back.reason).toHtmlEscaped());
    }
    sayIn(m_takenBack, rows.join(QStringLiteral("<br>")));
}

void StudyPanel::takeBack()
{
    if (const auto last = m_view.last)
        emit takeBackAsked(*last, StudyWords::oneReading(nameOf(last->coupling), nameOf(last->person)));
}

QString StudyPanel::nameOf(PersonId person) const
{
    return QString::fromStdString(nameIn(m_view.persons, person));
}

QString StudyPanel::nameOf(CouplingId coupling) const
{
    return QString::fromStdString(nameIn(m_view.couplings, coupling));
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
            auto* box = new QCheckBox{withoutKey(QString::fromStdString(thing.name))};
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
    const QString person = nameOf(m_view.next->person);
    m_next->setText(StudyWords::next(person, nameOf(m_view.next->coupling)));
    m_handTo->setText(StudyWords::handOver(person));
    m_iAm->setText(StudyWords::iAm(withoutKey(person)));
    const auto gauge = m_gauge->chosen<GaugeId>();
    m_gauge->fill(StudyWords::chooseGauge(), m_view.gauges);
    m_gauge->choose(gauge);
    sayIn(m_refused, {});
    showLeaves();
    // Whatever is pressed next must not be the hand-over by itself.
    const bool isOwn = holdsFocus(*this);
    m_stack->setCurrentIndex(1);
    m_handOver->setVisible(!isBegun());
    m_reading->setVisible(isBegun());
    if (isBegun())
        return;
    m_leaves->clearTyped();
    m_isSeen = false;
    update();
    if (isOwn)
        setFocus();
}

void StudyPanel::begin()
{
    if (!m_isSeen || !m_view.next)
        return;
    m_begun = m_view.next->id;
    sayAloud(m_kept, {});
    showReading();
    m_gauge->chosen<GaugeId>() ? m_leaves->setFocus() : m_gauge->setFocus();
}

void StudyPanel::showLeft()
{
    m_left->setText(StudyWords::left(m_view.result.read, m_view.result.wanted));
    m_stack->setCurrentIndex(3);
}

void StudyPanel::showKept(const StudyPlace& place)
{
    sayAloud(m_kept, StudyWords::keptAt(nameOf(place.person), m_view.result.read, m_view.result.wanted));
}

void StudyPanel::hideEvent(QHideEvent* event)
{
    if (!event->spontaneous())
        m_begun.reset(); // whoever comes back says anew who reads
    QWidget::hideEvent(event);
}

void StudyPanel::paintEvent(QPaintEvent*)
{
    m_isSeen = true;
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
    return m_stack->currentIndex() == 1 && isBegun() && m_leaves->isEnabled() && m_leaves->takeKey(event);
}

} // namespace rig
