#include "app/pages/paper_box.h"
#include "app/pages/prompts.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/part_panels.h"
#include "app/pages/setup/setup_panel.h"
#include "app/report/sheet_report.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/wording/paper_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/report_words.h"

#include <QVBoxLayout>

namespace rig {

namespace {

class PaperPanel : public SetUpPanel
{
public:
    PaperPanel(SetUpPresenter& presenter, Prompts& prompts)
        : SetUpPanel{presenter, {PaperWords::part(), PaperWords::why()}}, m_prompts{prompts}
    {
        m_paper = new PaperBox{
            "sheetPaper", withoutMnemonic(PaperWords::paper()), {Paper::A4, Paper::Letter, Paper::A5}};
        m_gauge = new ChoiceBox{PaperWords::gauge()};
        m_gauge->setObjectName("sheetGauge");
        addLabelled(PaperWords::paper(), m_paper);
        addLabelled(PaperWords::chooseGauge(), m_gauge);
        body()->addWidget(softLabel(PaperWords::gaugeHint()));
        m_save = panelButton("saveSheet", PaperWords::save());
        setPrimary(m_save, true);
        m_said = labelOf({}, "soft", "sheetSaid");
        m_said->hide();
        m_enter = panelButton("enterFromPaper", PaperWords::enterInSetUp());
        m_enter->setToolTip(PaperWords::enterWhy());
        body()->addWidget(new ButtonFlow{{m_save, m_enter}});
        connect(m_enter, &QPushButton::clicked, this, &SetUpPanel::paperEntryAsked);
        body()->addWidget(m_said);
        body()->addStretch(1);
        connect(m_save, &QPushButton::clicked, this, [this] { save(); });
    }

    void display(const SetUpView& view) override
    {
        const auto id = view.airframe ? std::optional{view.airframe->id} : std::nullopt;
        const bool isOther = m_airframe != id;
        const auto chosen = isOther ? view.gaugeUsedLast : m_gauge->chosen<GaugeId>();
        if (isOther)
            sayIn(m_said, {});
        m_airframe = id;
        std::vector<Gauge> inUse;
        for (const GaugeRow& row : view.gauges)
            if (row.gauge.inUse)
                inUse.push_back(row.gauge);
        m_gauge->fill(PaperWords::noGauge(), inUse);
        m_gauge->choose(chosen);
        m_save->setEnabled(view.couplingsInUse() > 0);
        m_enter->setEnabled(view.mayRig());
    }

    bool hasUnsaved() const override { return false; }
    void focusFirst() override { m_save->setFocus(); }

private:
    void addLabelled(const QString& text, QWidget* box)
    {
        QLabel* label = labelOf(text, "label");
        label->setTextFormat(Qt::AutoText); // with its mnemonic
        label->setBuddy(box);
        body()->addWidget(label);
        body()->addWidget(box, 0, Qt::AlignLeft);
    }

    void save()
    {
        if (!m_airframe)
            return;
        const auto sheet = presenter().paper.sheet(*m_airframe, m_gauge->chosen<GaugeId>());
        if (!sheet) {
            emit problemArose(ProblemWords::sentence(sheet.problem(), {}));
            return;
        }
        const QString path =
            m_prompts.askSaveFile(this, PaperWords::pdfFiles(), sheetFileName(sheet.value()));
        if (path.isEmpty())
            return;
        if (presenter().paper.save(sheet.value(), path, m_paper->paper()))
            sayIn(m_said, ReportWords::written(path));
        else
            emit problemArose(ReportWords::cannotWrite(path));
    }

    Prompts& m_prompts;
    std::optional<AirframeId> m_airframe;
    PaperBox* m_paper = nullptr;
    ChoiceBox* m_gauge = nullptr;
    QPushButton* m_save = nullptr;
    QPushButton* m_enter = nullptr;
    QLabel* m_said = nullptr;
};

} // namespace

SetUpPanel* makePaperPanel(SetUpPresenter& presenter, Prompts& prompts)
{
    return new PaperPanel{presenter, prompts};
}

} // namespace rig
